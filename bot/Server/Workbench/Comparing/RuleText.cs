using System.Globalization;
using System.Text;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Everything of the pages that the rules over the plan look at in a problem, as text.</summary>
internal static class RuleText
{
    public static string Of(Library library, SequencingProblem problem, SymptomId symptom)
    {
        var text = new StringBuilder();
        Line(text, "first", library.Symptoms[symptom].FirstIn.Select(state => state.Value)
            .Order(StringComparer.Ordinal));
        foreach (Fault fault in problem.Faults)
            Line(text, fault.Id.Value, Open(problem, library.Faults[fault.Id].Demanded));
        foreach (Check check in problem.Checks)
        {
            CheckPage page = library.Checks[check.Id];
            Line(text, check.Id.Value, Open(problem, page.After)
                .Append(page.Calculation is null ? "looks" : "measures"));
        }

        foreach (Repair repair in problem.Repairs)
            Line(text, repair.Id.Value, [library.Repairs.TryGetValue(repair.Id, out RepairPage? page)
                && !page.Parts.IsEmpty ? "part" : "none"]);
        return text.Append(Settings(library)).ToString();
    }

    private static string Settings(Library library)
    {
        WalkSettings set = library.Settings;
        var text = new StringBuilder();
        Line(text, "settings",
            new[] { set.NoneLeads, set.TriedFirst, set.InEarnest, set.Foregone, library.HandOverMinutes }
                .Select(Number));
        foreach (LaidRule rule in Enum.GetValues<LaidRule>())
            Line(text, rule.ToString(), [Number(set.LimitOf(rule).Minutes), Number(set.LimitOf(rule).Share)]);
        return text.ToString();
    }

    // What cannot be asked here changes nothing.
    private static IEnumerable<string> Open(SequencingProblem problem, IEnumerable<CheckId> checks) =>
        checks.Where(id => problem.Checks.Any(check => check.Id == id)).Select(id => id.Value);

    private static void Line(StringBuilder text, string name, IEnumerable<string> parts) =>
        text.Append(name).Append(' ').AppendJoin(' ', parts).Append('\n');

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
