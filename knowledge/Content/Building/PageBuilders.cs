using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the records of the plain kinds of pages.</summary>
internal static class PageBuilders
{
    public static CautionPage Caution(PageReader page) =>
        new(page.Id, page.Title, page.Joined("Danger"), page.Passages("Do"), page.Field("deadly") == "true");

    public static SymptomPage Symptom(PageReader page) =>
        new(new SymptomId(page.Id), page.Title, page.Summary, page.Passages("Said as"))
        {
            FirstIn = [.. page.List("first-in").Select(access => new AccessId(access))],
            Cautions = page.Cautions,
            StaysOff = page.Field("stays-off") == "true",
            Mode = page.Field("mode"),
            Danger = Enum.TryParse(page.Field("danger"), ignoreCase: true, out DangerKind kind) ? kind : null,
        };

    public static FaultPage Fault(PageReader page) => new(
        new FaultId(page.Id), page.Title, page.Summary, page.Field("part"), page.Series, page.Passages("Said as"),
        page.Passages("Seen"), page.Passages("Measured"), Alike(page), page.Joined("Proof"), Linked(page, "Proof"),
        page.Passages("Beware"), page.Joined("Warranty"))
    {
        ClaimDemands = [.. Linked(page, "Proof").Concat(Linked(page, "Warranty")).Distinct()],
        LeftBy = [.. page.List("left-by").Select(repair => new RepairId(repair))],
        VarietyOf = page.Field("variety-of") is { } fault ? new FaultId(fault) : null,
        CanBurn = page.Field("can-burn") == "true",
    };

    public static RepairPage Repair(PageReader page) => new(
        new RepairId(page.Id), page.Title, page.Passages("Steps"), page.Passages("Said as"), page.Joined("Verify"),
        page.List("parts"), page.Cautions)
    {
        MayNotHold = page.Field("may-not-hold") == "true",
        ProofAlways = page.Field("proof-always") == "true",
        LeftToOthers = page.Field("left-to-others") == "true",
        MayBeUnseen = page.Field("unseen") == "true",
        VerifyIn = page.Field("verify-in") is { } state ? new AccessId(state) : null,
        BeforeTrial = [.. page.List("before-trial").Select(check => new CheckId(check))],
        Changes = [.. page.List("changes").Select(check => new CheckId(check))],
    };

    public static RefusalPage Refusal(PageReader page) => new(
        page.Id, page.Title, page.Field("decision") == "refuse", page.Passages("Said as"), page.Passages("Answer"),
        page.Passages("Safe way"))
    {
        SoundsAlike = page.Passages("Sounds alike"),
        OwnersWay = page.Passages("Owner's way"),
    };

    public static TermPage Term(PageReader page) =>
        new(page.Id, page.Title, page.Passages("Said as"), page.Passages("Meaning"));

    public static RolePage Role(PageReader page, TableRow row, Section section) => new(
        new Role(row.Cells[0].Text, (int)Number.Read(row.Cells[1].Text)!.Value), page.Passage(row.Cells[2], section),
        page.Passage(row.Cells[3], section), SaidAs.Split(row.Cell(4)));

    public static GlossaryEntry Glossary(TableRow row) =>
        new(row.Cells[0].Text, SaidAs.Split(row.Cells[1]), SaidAs.Split(row.Cells[2]));

    private static ImmutableArray<CheckId> Linked(PageReader page, string heading) =>
    [
        .. page.Section(heading).SelectMany(section => section.Paragraphs).SelectMany(text => text.Links)
            .Select(link => page.Target(link, PageKind.Check)).OfType<Page>()
            .Select(check => new CheckId(check.Id)).Distinct(),
    ];

    private static ImmutableArray<LooksTheSame> Alike(PageReader page) =>
    [
        .. page.Section("Looks the same").SelectMany(section => section.Items.Select(item => new LooksTheSame(
            new FaultId(page.Target(item, PageKind.Fault)!.Id), page.Passage(item, section)))),
    ];
}
