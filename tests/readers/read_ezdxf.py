"""Reads a DXF file with ezdxf and prints what it understood as JSON. Needs python3-ezdxf."""

import json
import sys

import ezdxf
from ezdxf.math import Vec3

SAG = 1e-5  # mm between an arc and the chords that stand for it


def points_of(entity):
    """The shape as a fine chain of points; arcs are flattened one by one, not as splines."""
    if entity.dxftype() == "CIRCLE":
        return list(entity.flattening(SAG))
    points = []
    for piece in entity.virtual_entities():
        if piece.dxftype() == "LINE":
            chain = [piece.dxf.start, piece.dxf.end]
        else:
            chain = list(piece.flattening(SAG))
        # A clockwise arc comes as the same arc counter-clockwise.
        if points and points[-1].distance(chain[0]) > points[-1].distance(chain[-1]):
            chain.reverse()
        elif not points and len(chain) > 2 and Vec3(first_vertex(entity)).distance(chain[0]) > 1e-6:
            chain.reverse()
        points.extend(chain)
    return points


def first_vertex(entity):
    if entity.dxftype() == "LWPOLYLINE":
        return entity[0][:2]
    return entity.vertices[0].dxf.location


def is_closed(entity):
    return True if entity.dxftype() == "CIRCLE" else bool(entity.is_closed)


def shape_of(entity):
    points = points_of(entity)
    xs = [p.x for p in points]
    ys = [p.y for p in points]
    area = sum(a.x * b.y - b.x * a.y for a, b in zip(points, points[1:] + points[:1])) / 2
    return {
        "type": entity.dxftype(),
        "layer": entity.dxf.layer,
        "closed": is_closed(entity),
        "box": [min(xs), min(ys), max(xs), max(ys)],
        "area": area if is_closed(entity) else 0.0,
    }


def main(path):
    try:
        document = ezdxf.readfile(path)
    except (ezdxf.DXFError, OSError, ValueError) as problem:
        print(json.dumps({"refused": str(problem)}))
        return
    auditor = document.audit()
    modelspace = list(document.modelspace())
    print(json.dumps({
        "version": document.dxfversion,
        "units": document.header.get("$INSUNITS", 0) if document.dxfversion != "AC1009" else 0,
        "metric": document.header.get("$MEASUREMENT", 0) if document.dxfversion != "AC1009" else 0,
        "errors": [e.message for e in auditor.errors],
        "fixes": [e.message for e in auditor.fixes],
        "undeclared": sorted({e.dxf.layer for e in modelspace if not document.layers.has_entry(e.dxf.layer)}),
        "shapes": [shape_of(e) for e in modelspace],
    }))


main(sys.argv[1])
