using GearBlanks.Curves;
using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Fits;

namespace GearBlanks.Files.Jobs;

/// <summary>Makes what a job says of its stack.</summary>
internal static class StackJob
{
    public static JobFrame Frame(Entries file) => new(
        [.. file.Tables("columns").Select(column => new JobColumn(
            column.Place, column.Text("name")!, Position(column), column.Number("diameter")!.Value, column.Number("bottom")!.Value, column.Number("top")!.Value))],
        [.. file.Tables("plates").Select(Plate)],
        [.. file.Tables("arms").Select(Arm)]);

    public static JobSpindle Spindle(Entries spindle) => new(
        spindle.Place, spindle.Text("name")!, spindle.Number("diameter")!.Value, spindle.Number("bore") ?? 0, spindle.Number("bottom")!.Value,
        spindle.Number("top")!.Value, spindle.Text("turns-with"))
    {
        Class = Class(spindle, "class"),
        MeasuredDiameter = spindle.Number("measured-diameter"),
        BoreClass = Class(spindle, "bore-class"),
        MeasuredBore = spindle.Number("measured-bore"),
    };

    public static JobLayerFit Layer(Entries layer) => new()
    {
        ThicknessTolerance = layer.Number("thickness-tolerance"),
        MeasuredThickness = layer.Number("measured-thickness"),
        Diameter = layer.Number("diameter"),
        Bore = layer.Has("washer") ? layer.Number("bore") : null,
        BoreClass = Class(layer, "bore-class"),
        MeasuredBore = layer.Number("measured-bore"),
        Seat = layer.Text("seat") switch
        {
            "runs" => JobSeat.Runs,
            "pressed" => JobSeat.Pressed,
            "held" => JobSeat.Held,
            _ => null,
        },
    };

    public static JobScrewDepth? ScrewDepth(Entries screws) => StackKeys.OfScrews.Any(key => screws.Has(key.Name))
        ? new JobScrewDepth(
            screws.Number("thread"), screws.Number("head-height"), screws.Text("heads") == "down", screws.Number("length"), screws.Number("grip"), screws.Number("socket"))
        : null;

    public static JobHandShape? HandShape(Entries hand) => hand.Number("length") is { } length
        ? new JobHandShape(
            length, hand.Number("tail") ?? 0, hand.Number("width")!.Value, hand.Number("height")!.Value, hand.Number("thickness")!.Value, hand.Number("bore") ?? 0)
        : null;

    private static JobPlate Plate(Entries plate) => new(
        plate.Place, plate.Text("name")!, Position(plate), plate.Number("diameter"), plate.Number("length") ?? 0, plate.Number("width") ?? 0,
        plate.Number("direction") ?? 0, plate.Number("bottom")!.Value, plate.Number("thickness")!.Value, plate.Number("thickness-tolerance") ?? 0,
        [.. plate.Tables("holes").Select(hole => new Circle(Position(hole), hole.Number("diameter")!.Value / 2))]);

    private static JobArm Arm(Entries arm) => new(
        arm.Place, arm.Text("name")!, arm.Text("from")!, arm.Text("to")!, arm.Number("width")!.Value, arm.Number("bottom")!.Value,
        arm.Number("thickness")!.Value, arm.Number("thickness-tolerance") ?? 0, arm.Number("bore") ?? 0, arm.Text("turns-with"));

    private static Point Position(Entries table) =>
        table.Items("position") is [{ Value: double x }, { Value: double y }] ? new Point(x, y) : throw new InvalidOperationException("A required position is there.");

    private static ToleranceClass? Class(Entries table, string key) => table.Text(key) is { } text ? ToleranceClass.Read(text) : null;
}
