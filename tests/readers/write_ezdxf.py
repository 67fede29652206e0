"""Writes a DXF drawing again with ezdxf, drawn another way: write_ezdxf.py WAY IN OUT. Needs python3-ezdxf."""

import sys

import ezdxf
from ezdxf import path
from ezdxf.entities import Ellipse
from ezdxf.math import Matrix44


def shapes(source):
    """Closed contours of the layers outside and holes."""
    return [entity for entity in source.modelspace() if entity.dxf.layer in ("outside", "holes")]


def pieces(entity):
    return list(entity.virtual_entities()) if entity.dxftype() in ("LWPOLYLINE", "POLYLINE") else [entity]


def splines(source, target):
    for entity in shapes(source):
        path.render_splines_and_polylines(target.modelspace(), [path.make_path(entity, segments=64)], dxfattribs={"layer": entity.dxf.layer})


def ellipses(source, target):
    for entity in shapes(source):
        for piece in pieces(entity):
            if piece.dxftype() in ("ARC", "CIRCLE"):
                target.modelspace().add_entity(Ellipse.from_arc(piece))
            else:
                target.modelspace().add_entity(piece.copy())


def pieces_apart(source, target):
    """Lines and arcs one by one, every second one backwards where it can be, the last ones first."""
    for entity in reversed(shapes(source)):
        for number, piece in enumerate(reversed(pieces(entity))):
            if piece.dxftype() == "LINE" and number % 2:
                target.modelspace().add_line(piece.dxf.end, piece.dxf.start)
            else:
                target.modelspace().add_entity(piece.copy())


def inch_block(source, target):
    """In inches, in a block in a block, mirrored twice, turned and moved."""
    target.header["$INSUNITS"] = 1
    inner = target.blocks.new("TEETH", base_point=(1, 2))
    for entity in shapes(source):
        for piece in pieces(entity):
            copy = piece.copy()
            copy.transform(Matrix44.translate(1, 2, 0))
            inner.add_entity(copy)
    outer = target.blocks.new("PART")
    outer.add_blockref("TEETH", (0.1, 0), dxfattribs={"xscale": -1 / 25.4, "yscale": 1 / 25.4, "rotation": 12})
    target.modelspace().add_blockref("PART", (7, -3), dxfattribs={"xscale": -1, "rotation": 33})


def polylines_r12(source, target):
    for entity in shapes(source):
        if entity.dxftype() == "CIRCLE":
            target.modelspace().add_circle(entity.dxf.center, entity.dxf.radius)
        else:
            target.modelspace().add_polyline2d(entity.get_points("xyb"), format="xyb", close=True)


WAYS = {
    "splines": (splines, "R2018"),
    "ellipses": (ellipses, "R2010"),
    "pieces": (pieces_apart, "R2004"),
    "inch-block": (inch_block, "R2013"),
    "r12": (polylines_r12, "R12"),
}


def main():
    way, source, target = sys.argv[1:]
    write, version = WAYS[way]
    drawing = ezdxf.new(version)
    drawing.header["$INSUNITS"] = 4
    write(ezdxf.readfile(source), drawing)
    drawing.saveas(target)


main()
