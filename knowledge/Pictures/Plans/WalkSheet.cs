using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning.Trees;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>The page around a walk: its head, what the signs mean, what was left off, what to beware of.</summary>
internal sealed class WalkSheet(Library library, SeriesPage series, SymptomPage symptom, IPictureWords words,
    int? checks)
{
    /// <summary>
    /// Four units are a millimetre: 190 mm by 277 mm, A4 within margins of 10 mm. Letters of 12 are 8.5 points.
    /// </summary>
    public const double Width = 760, Height = 1108, HeadBottom = 78;

    private const int FootSize = 11;
    private const double FootLine = 13.5, KeyRoom = 30;

    private readonly WalkWriter writer = new(library, words, isFull: false);
    private readonly Dictionary<string, IReadOnlyList<string>> wrapped = new(StringComparer.Ordinal);

    public IPictureWords Words => words;

    /// <summary>How far down the steps of a tree may reach.</summary>
    public double Floor(WalkNode tree) => Height - Foot(tree).Count * FootLine - KeyRoom - 8;

    public Planned Draw(WalkLayout layout)
    {
        var pen = new Pen(Width, Height);
        Head(pen);
        WalkPen.Draw(pen, layout);
        Tail(pen, Foot(layout.Tree));
        string title = words.Say("picture-walk-title", ("symptom", symptom.Title.Text));
        string text = words.Say("picture-walk", ("steps", Shares.Number(layout.First.All.Count())));
        return new Planned(pen.Finish("walk-page", title, text, "group"), Lines(layout), IsPage: true);
    }

    private void Head(Pen pen)
    {
        string role = library.Roles.MaxBy(page => page.Role.Rank)!.Name.Text;
        pen.Link("#" + symptom.Title.Place.Path,
            inside => inside.Text("ink", 0, 22, symptom.Title.Text, size: 22, bold: true));
        double y = 26;
        foreach (string line in TextSize.Wrapped(
            words.Say("picture-walk-lead", ("series", series.Title.Text), ("role", role)), Width, 13))
            pen.Text("soft", 0, y += 16, line, size: 13);
        pen.Line("edge", 0, 68, Width, 68);
    }

    private void Tail(Pen pen, IReadOnlyList<string> foot)
    {
        double y = Height - foot.Count * FootLine - KeyRoom;
        pen.Line("edge", 0, y, Width, y);
        Key(pen, y + 7);
        y += KeyRoom + 1;
        foreach (string line in foot)
        {
            pen.Text("ink", 0, y, line, size: FootSize);
            y += FootLine;
        }
    }

    private void Key(Pen pen, double y)
    {
        double x = 1;
        void Sign(string phrase, double room, Action<double> sign)
        {
            sign(x);
            string text = words.Say(phrase);
            pen.Text("ink", x + room, y + 11, text, size: 12);
            x += room + TextSize.Width(text, 12) + 20;
        }

        Sign("picture-walk-key-check", 32, at => pen.Box("ink", at, y, at + 26, y + 13, " stroke-width=\"1.5\""));
        Sign("picture-walk-key-repair", 32, at => pen.Box("ink", at, y, at + 26, y + 13, " stroke-width=\"1.5\"")
            .Box("ink", at + 3, y + 3, at + 23, y + 10, " stroke-width=\"1\""));
        Sign("picture-walk-key-state", 16, at => pen.Text("off", at, y + 11, "▲", size: 12, bold: true));
    }

    private IReadOnlyList<string> Foot(WalkNode tree)
    {
        string cut = tree.CutShare < 0.0005
            ? words.Say("picture-walk-whole")
            : words.Say("picture-walk-cut", ("share", writer.Percent(tree.CutShare)));
        string[] said =
        [
            checks is { } most ? $"{cut} {words.Say("picture-walk-limit", ("checks", Shares.Number(most)))}" : cut,
            .. States(tree).Distinct().Order().Where(state => state != library.Graph.Access.Start)
                .Select(state => $"▲ {library.Access[state].Title.Text}: {library.Access[state].Summary.Text}"),
            words.Say("picture-walk-beware"),
        ];
        return [.. said.SelectMany(Wrapped)];
    }

    private IReadOnlyList<string> Wrapped(string line) => wrapped.TryGetValue(line, out IReadOnlyList<string>? known)
        ? known
        : wrapped[line] = TextSize.Wrapped(line, Width, FootSize);

    private static IEnumerable<AccessId> States(WalkNode node) =>
        node.Branches.SelectMany(branch => States(branch.Next))
        .Concat(WalkWriter.AccessOf(node) is { } access ? [access] : []);

    private ImmutableArray<PlannedLine> Lines(WalkLayout layout) =>
    [
        .. layout.First.All.OrderBy(step => step.Number).SelectMany(Lines),
        .. Foot(layout.Tree).Select(line => new PlannedLine(0, line)),
    ];

    private IEnumerable<PlannedLine> Lines(WalkStep step)
    {
        string title = $"{Shares.Number(step.Number)}. {(step.State is null ? "" : $"▲ {step.State}. ")}{step.Title}";
        yield return new PlannedLine(0, step.Note is null ? title : $"{title}. {step.Note}");
        foreach (WalkRow row in step.Rows)
            yield return new PlannedLine(1, row.Next is { } next
                ? words.Say("picture-walk-way", ("answer", row.Answer), ("share", writer.Percent(row.Share)),
                    ("number", Shares.Number(next.Number)))
                : $"{row.Answer}, {writer.Percent(row.Share)}: {row.Suspect}");
    }
}
