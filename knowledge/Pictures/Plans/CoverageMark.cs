namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Signs that differ in shape, whatever the colour.</summary>
internal static class CoverageMark
{
    public static Pen Draw(Pen pen, double x, double y, Coverage coverage) => coverage switch
    {
        Coverage.Measured =>
            pen.Box("found", x - 5.5, y - 5.5, x + 5.5, y + 5.5, " fill=\"currentColor\" stroke-width=\"1.5\""),
        Coverage.Decided => pen.Box("found", x - 5.5, y - 5.5, x + 5.5, y + 5.5, " stroke-width=\"1.5\""),
        Coverage.Leans => pen.Polygon("ink", [(x - 5, y + 5), (x + 5, y + 5), (x, y - 5)], " stroke-width=\"1.2\""),
        _ => pen.Line("off", x - 4.5, y - 4.5, x + 4.5, y + 4.5).Line("off", x - 4.5, y + 4.5, x + 4.5, y - 4.5),
    };
}
