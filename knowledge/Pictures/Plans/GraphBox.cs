namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A check, fault or repair of a symptom's graph.</summary>
/// <param name="Page">The page it links to.</param>
/// <param name="Lines">Its name, as it fits the box.</param>
internal sealed record GraphBox(string Id, string Page, IReadOnlyList<string> Lines)
{
    public const double Width = 250, LineHeight = 17;

    public bool IsRepair { get; init; }

    public double Height => Lines.Count * LineHeight + 11;

    public static GraphBox Of(string id, string name, string page) =>
        new(id, page, TextSize.Wrapped(name, Width - 20, TextSize.Plain));

    public void Draw(Pen pen, double left, double top) => pen.Link("#" + Page, inside =>
    {
        inside.Box("ink", left, top, left + Width, top + Height, " fill=\"var(--paper)\" stroke-width=\"1.5\"");
        if (IsRepair) inside.Box("ink", left + 3, top + 3, left + Width - 3, top + Height - 3, " stroke-width=\"1\"");
        double y = top + 1.5;
        foreach (string line in Lines) inside.Text("ink", left + 10, y += LineHeight, line);
    });
}
