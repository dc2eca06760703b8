using System.Globalization;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Says what numbers, words and links mean.</summary>
internal sealed class Explanations(Pages pages)
{
    // What any cell of a column means, by section and head.
    private static readonly Dictionary<(string Section, string Head), string> Columns = new()
    {
        [("Readings", "Unit")] =
            "The unit that is asked for. Readings in another unit of the same quantity are taken too.",
        [("Readings", "Possible")] =
            "What can be read at all, broken parts included. The assistant asks back about a reading outside of it.",
        [("Outcomes", "Verdict")] = "The verdicts of the calculation that are this outcome.",
        [("Ways here", "Minutes")] =
            "Minutes to bring the unit from that state to this one. They are part of what a step costs.",
    };

    public EditorText? Of(Spot spot)
    {
        if (spot.Link is { } link)
            return pages.Target(spot.Page, link) is { } target ? Text(spot, link.Span, About(target)) : null;
        if (spot.Field is { } field) return OfField(spot, field);
        return spot.CellText is { } cell && OfCell(spot, cell) is { } said ? Text(spot, cell.Span, said) : null;
    }

    private EditorText? OfField(Spot spot, FrontMatterField field)
    {
        string? said = field.Name switch
        {
            "minutes" =>
                "Minutes at the unit once it stands in its access state. The planner weighs them against what the "
                    + "step tells.",
            "changes" =>
                "Checks whose results from before no longer count when this repair did not cure: they are asked "
                    + "for anew.",
            "may-not-hold" =>
                "Whether it may be the right work and still not cure, such as a second leak. Then its faults are not "
                    + "ruled out, only unlikely.",
            "verify-in" =>
                "The access state for the trial run, where its question asks for what is read there, such as pressures.",
            "leaves" =>
                "The access state in which the unit stands once this has a result, where its steps switch it on. The "
                    + "way to the next step begins there.",
            "before-trial" =>
                "Checks without whose sound results the unit is not switched on after this repair. Another result is a "
                    + "second fault.",
            "verify-minutes" =>
                "Minutes to see whether the repair worked. They are part of every repair, also of one that does "
                    + "not help.",
            "proof-always" =>
                "Whether the proof of the fault comes before this repair, however long it takes: the dearest parts.",
            "unseen" =>
                "Whether an owner may try it though nobody looked for its fault: it can hurt nobody and costs nothing.",
            "left-to-others" =>
                "Whether it is the work of another trade. The case ends once it is arranged, and the unit stays off.",
            "needed" => "Whether nothing else is done before this is known: it is not left out.",
            "only-at" => "Symptoms at which alone this is asked.",
            "same-as" =>
                "Checks that find the same in another way. Once one of them gave a result, this one is not asked.",
            "tells-mode" =>
                "Whether the answer says in which mode the trouble shows. What is done in another mode is then "
                    + "left out.",
            "stays-off" =>
                "Whether the unit stays off until a technician has looked at it: what is said to who asks whether it "
                    + "may run on.",
            "mode" =>
                "The mode in which the symptom shows: who says at a trial run that it cools now has cured no trouble "
                    + "of heating.",
            "danger" =>
                "What danger the symptom is a sign of itself. What to do is said at once, and an owner's walk ends.",
            "stop-shock" =>
                "Signs of danger at which metal may be live: nothing of the unit is touched, and it is switched off in "
                    + "the panel.",
            "frequency" when field.Text is { } word => Frequency(word),
            "calculation" when Judges.Find(field.Text) is { } judge => About(judge),
            _ when spot.Value is not null && new Definitions(pages).PageNamed(spot) is { } page => About(page),
            _ => null,
        };
        return said is null ? null : Text(spot, field.Span, said);
    }

    private string? OfCell(Spot spot, RichText cell) => spot.Section!.Name switch
    {
        "Likelihoods" when spot.Page.Kind == PageKind.Check && spot.Cell > 0 => Likelihood(cell.Text,
            $"Of 100 units with this fault, {{0}} show the outcome `{spot.Head}`."),
        "Causes" when spot.Cell > 0 => Likelihood(cell.Text, "Of 100 units with this fault, {0} show this symptom."),
        "Expected" when Judges.Find(spot.Page.Front?.Field("calculation")?.Text) is { } judge
            && judge.Inputs.FirstOrDefault(input => input.Name == spot.Row!.Cell(0)?.Text) is { } need =>
            $"`{need.Name}`: {need.Meaning}{(need.Required ? "" : " (may be left out)")}",
        _ => Columns.GetValueOrDefault((spot.Section.Name, spot.Head ?? "")),
    };

    private string? Likelihood(string text, string sentence)
    {
        if (text.Length == 0) return "An even share of what the other cells of the row leave to 1.";
        if (pages.Likelihood(text) is not { } value) return null;
        string hundred = Number(value * 100);
        return $"`{text}` = {Number(value)}. " + string.Format(CultureInfo.InvariantCulture, sentence, hundred);
    }

    private string? Frequency(string word)
    {
        double? weight = pages.Frequencies.TryGetValue(word, out double known) ? known : Constructs.Number.Read(word);
        return weight is null ? null
            : $"`{word}` = {Number(weight.Value)}: how often the fault is met against others. "
                + string.Join(", ", pages.Frequencies.OrderByDescending(pair => pair.Value)
                    .Select(pair => $"{pair.Key} {Number(pair.Value)}"));
    }

    private static string About(Page page) =>
        $"**{page.Title?.Name ?? page.Id}** ({page.Path})\n\n{page.Summary?.Text}";

    private static string About(IJudge judge) =>
        $"**{judge.Name}**\n\nReadings: {string.Join(", ", judge.Readings.Select(reading => reading.Name))}\n\n"
        + string.Concat(
            judge.Inputs.Select(
                input => $"- `{input.Name}`: {input.Meaning}{(input.Required ? "" : " (may be left out)")}\n"))
        + $"\nVerdicts: {string.Join(", ", judge.Verdicts.Select(VerdictWords.Of))}";

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static EditorText Text(Spot spot, TextSpan span, string markdown) =>
        new(EditorRange.Of(spot.Page.Source.Text, span), markdown);
}
