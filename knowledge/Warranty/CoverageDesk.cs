using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Warranty;

/// <summary>Decides by the terms of coverage what is paid. Pure: no clock, no files.</summary>
/// <remarks>
/// A term of n months ends before the same day n months later, or before the last day of a month that is too short.
/// </remarks>
public static class CoverageDesk
{
    /// <exception cref="KeyNotFoundException">The series or the fault is not in the library.</exception>
    public static CoverageDecision Assess(Library library, CoverageQuery query)
    {
        CoveragePage terms = library.Coverage[library.Series[query.Series].Coverage];
        FaultPage fault = library.Faults[query.Fault];
        if (fault.Part is null)
            return Refused(CoverageAnswer.NotCovered, new(CoverageReasonKind.SiteCondition, fault.Warranty));
        if (terms.Excluded.TryGetValue(query.Fault, out Passage? reason))
            return Refused(CoverageAnswer.NotCovered, new(CoverageReasonKind.Excluded, reason));
        if ((terms.Start == CoverageStart.Installation ? query.Installed : query.Bought) is not { } start)
            return Refused(CoverageAnswer.Unsettled, new(CoverageReasonKind.StartUnknown, terms.Title));
        return query.Failed < start
            ? Refused(CoverageAnswer.Unsettled, new(CoverageReasonKind.FailedBeforeStart, terms.Title))
            : InTime(terms, terms.TermOf(fault.Part), query, start);
    }

    private static CoverageDecision InTime(CoveragePage terms, PartTerm term, CoverageQuery query, DateOnly start)
    {
        CoverageReason registration = Registration(terms, query.Registered, start);
        int months = registration.Kind == CoverageReasonKind.RegisteredInTime ? term.RegisteredMonths : term.Months;
        DateOnly until = start.AddMonths(months);
        bool covered = query.Failed < until;
        var part = new CoverageReason(
            covered ? CoverageReasonKind.PartInTerm : CoverageReasonKind.PartOutOfTerm, term.Class, months, until);
        if (!covered)
            return new CoverageDecision(CoverageAnswer.NotCovered, CoverageAnswer.NotCovered, 0, [registration, part]);
        (CoverageReason labour, double minutes) = Labour(terms, query, start);
        CoverageAnswer paid = labour.Kind == CoverageReasonKind.LabourAllowed
            ? CoverageAnswer.Covered
            : CoverageAnswer.NotCovered;
        return new CoverageDecision(CoverageAnswer.Covered, paid, minutes, [registration, part, labour]);
    }

    private static CoverageReason Registration(CoveragePage terms, DateOnly? registered, DateOnly start) => new(
        registered is not { } day ? CoverageReasonKind.NotRegistered
        : day <= start.AddDays(terms.RegisterDays) ? CoverageReasonKind.RegisteredInTime
        : CoverageReasonKind.RegisteredLate,
        terms.Summary);

    private static (CoverageReason Reason, double Minutes) Labour(CoveragePage terms, CoverageQuery query,
        DateOnly start)
    {
        DateOnly until = start.AddMonths(terms.LabourMonths);
        if (!terms.Labour.TryGetValue(query.Repair, out LabourAllowance? allowance))
            return (new(CoverageReasonKind.NoAllowance, terms.Title), 0);
        return query.Failed < until
            ? (new(CoverageReasonKind.LabourAllowed, allowance.Name, terms.LabourMonths, until), allowance.Minutes)
            : (new(CoverageReasonKind.LabourOutOfTerm, allowance.Name, terms.LabourMonths, until), 0);
    }

    private static CoverageDecision Refused(CoverageAnswer answer, CoverageReason reason) =>
        new(answer, answer, 0, ImmutableArray.Create(reason));
}
