namespace GearBlanks.Files.Drawings;

/// <summary>What a DXF file holds: its unit, its blocks, its entities.</summary>
internal sealed class DxfContent
{
    // A gear of a thousand teeth drawn point by point is far below.
    private const int MostGroups = 8_000_000;

    private static readonly string[] Polylines = ["POLYLINE", "INSERT"];

    private readonly DxfGroups _groups;
    private DxfGroup? _ahead;
    private int _count;

    private DxfContent(string text) => _groups = new DxfGroups(text);

    /// <summary>Number of the drawing's unit; null where the file says none.</summary>
    public int? Unit { get; private set; }

    public Dictionary<string, (DxfEntity Head, List<DxfEntity> Entities)> Blocks { get; } = new(StringComparer.OrdinalIgnoreCase);

    public List<DxfEntity> Entities { get; } = [];

    /// <summary>Layers as the file lists them.</summary>
    public Dictionary<string, DxfLayer> Layers { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <exception cref="DrawingException">This is not a DXF file, or a broken one.</exception>
    public static DxfContent Of(string text)
    {
        var content = new DxfContent(text);
        content.Read();
        return content;
    }

    private void Read()
    {
        bool hasSection = false;
        while (Take() is { } group)
        {
            if (group is { Code: 0, Value: "SECTION" } && Take() is { Code: 2 } name)
            {
                hasSection = true;
                ReadSection(name.Value);
            }
            else if (group is { Code: 0, Value: "EOF" })
            {
                return;
            }
            else if (!hasSection)
            {
                throw new DrawingException(group.Line, group.Value, "This is not a DXF drawing: it does not begin with a section", "a drawing saved as DXF (ASCII) or SVG");
            }
        }

        throw hasSection
            ? new DrawingException(0, null, "The file is cut off: its end is missing", "the whole file: save or copy it again")
            : new DrawingException(0, null, "This file is empty", "a drawing saved as DXF (ASCII) or SVG");
    }

    private void ReadSection(string name)
    {
        while (Take() is { } group)
        {
            if (group is { Code: 0, Value: "ENDSEC" })
            {
                return;
            }

            switch (name)
            {
                case "HEADER" when group is { Code: 9, Value: "$INSUNITS" } && Take() is { } unit:
                    Unit = unit.Whole;
                    break;
                case "TABLES" when group is { Code: 0, Value: "LAYER" }:
                    ReadLayer(group);
                    break;
                case "BLOCKS" when group is { Code: 0, Value: "BLOCK" }:
                    ReadBlock(group);
                    break;
                case "ENTITIES" when group.Code == 0:
                    Entities.Add(ReadEntity(group));
                    break;
            }
        }

        throw new DrawingException(0, null, $"The file is cut off in its section {name}", "the whole file: save or copy it again");
    }

    private void ReadLayer(DxfGroup start)
    {
        const int Frozen = 1;
        DxfEntity layer = ReadEntity(start);
        Layers[layer.Text(2) ?? ""] = new DxfLayer(layer.Whole(62, 7) < 0, (layer.Whole(70) & Frozen) != 0);
    }

    private void ReadBlock(DxfGroup start)
    {
        DxfEntity head = ReadEntity(start);
        List<DxfEntity> entities = [];
        while (Take() is { } group)
        {
            if (group is { Code: 0, Value: "ENDBLK" })
            {
                _ = ReadEntity(group);
                Blocks[head.Text(2) ?? ""] = (head, entities);
                return;
            }

            if (group is { Code: 0, Value: "ENDSEC" or "EOF" })
            {
                break;
            }

            if (group.Code == 0)
            {
                entities.Add(ReadEntity(group));
            }
        }

        throw new DrawingException(start.Line, "BLOCK", "This block has no end", "the whole file: save or copy it again");
    }

    // The tags up to the next entity, and of a polyline those that follow it up to its end.
    private DxfEntity ReadEntity(DxfGroup start)
    {
        var entity = new DxfEntity(start.Value.ToUpperInvariant(), start.Line, Tags(), []);
        if (!Polylines.Contains(entity.Type) || entity.Whole(66) != 1)
        {
            return entity;
        }

        while (Take() is { } group)
        {
            if (group is { Code: 0, Value: "SEQEND" })
            {
                _ = Tags();
                return entity;
            }

            if (group.Code != 0 || group.Value is "ENDSEC" or "EOF")
            {
                break;
            }

            entity.Parts.Add(new DxfEntity(group.Value, group.Line, Tags(), []));
        }

        throw new DrawingException(start.Line, start.Value, "The vertices of this entity have no end", "the whole file: save or copy it again");
    }

    private List<DxfGroup> Tags()
    {
        List<DxfGroup> tags = [];
        while (Take() is { } group)
        {
            if (group.Code == 0)
            {
                _ahead = group;
                break;
            }

            tags.Add(group);
        }

        return tags;
    }

    private DxfGroup? Take()
    {
        if (_ahead is { } held)
        {
            _ahead = null;
            return held;
        }

        if (++_count > MostGroups)
        {
            throw new DrawingException(0, null, "This drawing is too large to be a gear's", "a file with one part");
        }

        return _groups.Next();
    }
}

/// <summary>Whether a layer is shown.</summary>
/// <param name="IsOff">True where its own lines are not shown.</param>
/// <param name="IsFrozen">True where blocks inserted on it are not shown either.</param>
internal readonly record struct DxfLayer(bool IsOff, bool IsFrozen);
