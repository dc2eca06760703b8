namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Draws the steps of a walk and the ways between them.</summary>
internal static class WalkPen
{
    public static void Draw(Pen pen, WalkLayout layout)
    {
        WalkStep[] steps = [.. layout.First.All.OrderBy(step => step.Number)];
        foreach (WalkStep step in steps) Ways(pen, layout, step);
        foreach (WalkStep step in steps) Box(pen, layout, step);
    }

    private static void Ways(Pen pen, WalkLayout layout, WalkStep step)
    {
        double left = layout.Left(step), right = left + layout.Box.Width;
        if (step.Below is { } below)
        {
            pen.Line("ink", left + 16, step.Top + step.Height, left + 16, below.Top, " stroke-width=\"1.2\"");
            Arrow(pen, left + 16, below.Top, isDown: true);
        }

        foreach (WalkLine line in layout.Box.Lines(step).Where(line => line.Way is { IsDown: false }))
            Way(pen, right, step.Top + line.Y - 4, right + WalkPacking.Gap, line.Way!);
    }

    private static void Way(Pen pen, double from, double y, double to, WalkRow way)
    {
        double entry = way.Next!.Top + WalkPacking.EntryAt, lane =
            to - WalkPacking.FirstLane - way.Lane * WalkPacking.LaneRoom;
        if (entry <= y + 0.05) pen.Line("ink", from, y, to, y, " stroke-width=\"1.2\"");
        else pen.Polyline("ink", [(from, y), (lane, y), (lane, entry), (to, entry)], " stroke-width=\"1.2\"");
        Arrow(pen, to, entry, isDown: false);
    }

    private static void Arrow(Pen pen, double x, double y, bool isDown) => pen.Polygon("ink",
        isDown
            ? [(x, y), (x - 4, y - 7), (x + 4, y - 7)]
            : [(x, y), (x - 7, y - 4), (x - 7, y + 4)], " fill=\"currentColor\" stroke-width=\"1\"");

    private static void Box(Pen pen, WalkLayout layout, WalkStep step)
    {
        double left = layout.Left(step), right = left + layout.Box.Width, bottom = step.Top + step.Height;
        pen.Link(step.Page is null ? null : "#" + step.Page, inside =>
        {
            inside.Box("ink", left + 1, step.Top, right - 1, bottom, " fill=\"var(--paper)\" stroke-width=\"1.5\"");
            if (step.IsRepair) inside.Box("ink", left + 4, step.Top + 3, right - 4, bottom - 3, " stroke-width=\"1\"");
            foreach (WalkLine line in layout.Box.Lines(step)) Line(inside, line, left, right, step.Top);
        });
    }

    private static void Line(Pen pen, WalkLine line, double left, double right, double top)
    {
        if (line.IsRule)
            pen.Line("edge", left + 5, top + line.Y - 12.5, right - 5, top + line.Y - 12.5, " stroke-width=\"0.7\"");
        pen.Text(line.Look, left + WalkBox.Inside + 1, top + line.Y, line.Text, size: line.Size, bold: line.IsBold);
        if (line.Way is not { } way) return;
        string number = Shares.Number(way.Next!.Number);
        pen.Text("ink", right - WalkBox.Inside - 1, top
            + line.Y, $"{(way.IsDown ? "↓" : "→")} {number}", Anchor.End, WalkBox.Size, bold: true);
    }
}
