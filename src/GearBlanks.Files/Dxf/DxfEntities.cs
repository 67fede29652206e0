using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Dxf;

/// <summary>Writes shapes as entities, in the drawing's order.</summary>
internal abstract class DxfEntities(DxfTags tags)
{
    private const int ClosedFlag = 1;

    protected DxfTags Tags { get; } = tags;

    public static DxfEntities For(DxfVersion version, DxfTags tags, int firstHandle) =>
        version == DxfVersion.R12 ? new R12Entities(tags) : new R2000Entities(tags, firstHandle);

    public void Write(Drawing drawing)
    {
        foreach (DrawingLayer layer in drawing.Layers)
        {
            foreach (ArcPath path in layer.Paths)
            {
                WritePath(path, layer.Name);
            }

            foreach (Circle circle in layer.Circles)
            {
                WriteCircle(circle, layer.Name);
            }
        }
    }

    protected abstract void WritePath(ArcPath path, string layer);

    protected abstract void BeginCircle(string layer);

    protected static int FlagsOf(ArcPath path) => path.Closed ? ClosedFlag : 0;

    protected void WriteBulge(PathVertex vertex)
    {
        if (vertex.Bulge != 0)
        {
            Tags.AddBulge(42, vertex.Bulge);
        }
    }

    private void WriteCircle(Circle circle, string layer)
    {
        BeginCircle(layer);
        Tags.AddPoint(10, circle.Centre.X, circle.Centre.Y, 0);
        Tags.Add(40, circle.Radius);
    }

    private sealed class R2000Entities(DxfTags tags, int firstHandle) : DxfEntities(tags)
    {
        private int _handle = firstHandle;

        protected override void WritePath(ArcPath path, string layer)
        {
            Begin("LWPOLYLINE", layer, "AcDbPolyline");
            Tags.Add(90, path.Vertices.Length);
            Tags.Add(70, FlagsOf(path));
            foreach (PathVertex vertex in path.Vertices)
            {
                Tags.AddPoint(10, vertex.Point.X, vertex.Point.Y);
                WriteBulge(vertex);
            }
        }

        protected override void BeginCircle(string layer) => Begin("CIRCLE", layer, "AcDbCircle");

        private void Begin(string type, string layer, string subclass)
        {
            Tags.Add(0, type);
            Tags.AddHandle(5, _handle++);
            Tags.AddHandle(330, DxfHandles.ModelRecord);
            Tags.Add(100, "AcDbEntity");
            Tags.Add(8, layer);
            Tags.Add(100, subclass);
        }
    }

    private sealed class R12Entities(DxfTags tags) : DxfEntities(tags)
    {
        protected override void WritePath(ArcPath path, string layer)
        {
            Begin("POLYLINE", layer);
            Tags.Add(66, 1);
            Tags.AddPoint(10, 0, 0, 0);
            Tags.Add(70, FlagsOf(path));
            foreach (PathVertex vertex in path.Vertices)
            {
                Begin("VERTEX", layer);
                Tags.AddPoint(10, vertex.Point.X, vertex.Point.Y, 0);
                WriteBulge(vertex);
            }

            Begin("SEQEND", layer);
        }

        protected override void BeginCircle(string layer) => Begin("CIRCLE", layer);

        private void Begin(string type, string layer)
        {
            Tags.Add(0, type);
            Tags.Add(8, layer);
        }
    }
}
