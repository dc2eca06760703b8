using DxAssistant.Knowledge.Warranty;

namespace DxAssistant.Cases.Claims;

/// <summary>One reason why something is paid or not, with the page that says so.</summary>
/// <param name="On">The words of the page.</param>
/// <param name="Page">The page, relative to the content folder, and the heading there.</param>
/// <param name="Until">The first day that is no longer covered; null where none is reckoned.</param>
public sealed record ClaimReason(string Kind, string On, string Page, int? Months, DateOnly? Until)
{
    public static ClaimReason Of(CoverageReason reason) => new(
        Word(reason.Kind), reason.On.Text, $"{reason.On.Place.Path}, {reason.On.Place.Heading}", reason.Months,
        reason.Until);

    private static string Word(CoverageReasonKind kind) => kind switch
    {
        CoverageReasonKind.SiteCondition => "a condition of the site, no failed part",
        CoverageReasonKind.Excluded => "excluded by the terms",
        CoverageReasonKind.StartUnknown => "the day from which the months run is not known",
        CoverageReasonKind.FailedBeforeStart => "failed before the months began",
        CoverageReasonKind.RegisteredInTime => "registered in time",
        CoverageReasonKind.RegisteredLate => "registered too late for the longer months",
        CoverageReasonKind.NotRegistered => "not registered",
        CoverageReasonKind.PartInTerm => "the part failed within its months",
        CoverageReasonKind.PartOutOfTerm => "the part failed after its months",
        CoverageReasonKind.LabourAllowed => "work is paid",
        CoverageReasonKind.LabourOutOfTerm => "the months in which work is paid are over",
        CoverageReasonKind.NoAllowance => "the terms list no minutes for this repair",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no such reason"),
    };
}
