using System.Globalization;
using System.Text;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Everything of a problem that can change its walks, as text: two problems with one text have the same
/// walks.</summary>
internal static class ProblemText
{
    public static string Of(SequencingProblem problem)
    {
        FaultId[] faults = [.. problem.Faults.Select(fault => fault.Id)];
        var text = new StringBuilder();
        foreach (Fault fault in problem.Faults) Line(text, fault.Id, Number(fault.Weight));
        foreach (Check check in problem.Checks.Where(check => check.Separates(faults)))
        {
            Line(text, check.Id, Number(check.Minutes), string.Join(',', check.Access),
                string.Join(',', check.Outcomes));
            foreach (FaultId fault in faults) Line(text, [.. check.Row(fault).Select(Number)]);
        }

        foreach (Repair repair in problem.Repairs)
        {
            Line(text, repair.Id, Number(repair.Minutes), Number(repair.VerifyMinutes), Number(repair.WrongMinutes),
                string.Join(',', repair.Access), string.Join(',', repair.Fixes.Where(faults.Contains)));
        }

        foreach (AccessState from in problem.Access.All)
            foreach (AccessState to in problem.Access.All)
                Line(text, from.Id, to.Id, Number(problem.Access.Minutes(from.Id, to.Id)));
        return text.Append(problem.Access.Start).Append(problem.Access.Verify).ToString();
    }

    private static void Line(StringBuilder text, params object[] parts) => text.AppendJoin(' ', parts).Append('\n');

    // Twelve digits: what differs beyond them is rounding.
    private static string Number(double value) => value.ToString("G12", CultureInfo.InvariantCulture);
}
