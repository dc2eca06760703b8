using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Languages;
using static DxAssistant.Knowledge.Content.Shapes.SectionShape;

namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>The shapes of all kinds of pages: the one place that says which fields, headings and heads there
/// are.</summary>
internal static class PageShapes
{
    private static readonly FieldShape Kind = new("kind", FieldType.Words, true);
    private static readonly FieldShape Id = new("id", FieldType.Words, true);
    private static readonly FieldShape Access = new("access", FieldType.Ids, true, RefersTo: PageKind.Access);
    private static readonly FieldShape Who = new("who", FieldType.Ids, true, RefersTo: PageKind.Roles);
    private static readonly FieldShape SeriesFilter = new("series", FieldType.Ids, false, RefersTo: PageKind.Series);
    private static readonly FieldShape Minutes = new("minutes", FieldType.Minutes, true);
    private static readonly SectionShape Cautions = List("Cautions", false, PageKind.Caution);
    private static readonly SectionShape Sources = List("Sources", false, PageKind.Sources);
    private static readonly ColumnShape Source = new("Source", true);

    private static readonly ImmutableArray<PageShape> All =
    [
        new(PageKind.Index, null, [Kind, Id], [], new SectionShape("", SectionContent.Any)),
        new(PageKind.Words, null, [Kind, Id],
        [
            Table("Likelihoods", true, new("Word"), new("Value"), Source),
            Table("Frequencies", true, new("Word"), new("Value"), Source),
            Table("Prices", false, new("Word"), new("Value"), Source),
            Table(EarlierTable.Heading, false, new(EarlierTable.Within), new(EarlierTable.Same), new(EarlierTable.Left),
                Source),
            Table(SettingsTable.Heading, false, new(SettingsTable.Setting), new(SettingsTable.Value), new("Unit"),
                new("Means"), Source),
            Table(SettingsTable.RulesHeading, false, new(SettingsTable.Rule), new(SettingsTable.Minutes),
                new(SettingsTable.Share), new("Means"), Source),
        ]),
        new(PageKind.Sources, null, [Kind, Id], [], Sentence("")),
        new(PageKind.Phrases, null, [Kind, Id], [], Sentence("")),
        new(PageKind.Glossary, null, [Kind, Id], [],
            Table("", true, new("Concept"), new("Also said as", true), new("Often misspelt", true))),
        new(PageKind.Roles, null, [Kind, Id],
            [Table("Roles", true, new("Role"), new("Rank"), new("Name"), new("May do"),
                new("Said as", true, MayBeLeftOut: true))]),
        new(PageKind.Access, "access",
            [Kind, Id, new("start", FieldType.YesNo, false), new("verify", FieldType.YesNo, false), Who],
            [
                Table("Steps", true, new("Do"), new("Reading", true), new("Safe when", true),
                    new("Done in", true, PageKind.Access, MayBeLeftOut: true),
                    new("Only at", true, MayBeLeftOut: true)),
                Table("Ways here", true, new("From", LinksTo: PageKind.Access), new("Minutes")),
                Cautions, Sources,
            ]),
        new(PageKind.Caution, "cautions",
            [
                Kind, Id, new("deadly", FieldType.YesNo, false),
                new("states", FieldType.Ids, false, RefersTo: PageKind.Access),
                new("words", FieldType.List, false),
                new("instead-of", FieldType.Ids, false, RefersTo: PageKind.Caution),
            ],
            [Sentence("Danger"), List("Do"), Sources]),
        new(PageKind.Series, "series",
            [
                Kind, Id, new("display", FieldType.Choice, true, ["two digits", "lamps", "none"]),
                new("market", FieldType.Choice, true, ["°F and psig", "°C and kPa"]),
                new("serial", FieldType.Pattern, false), new("serial-example", FieldType.Words, false),
            ],
            [
                List("Said as"),
                Table("Ratings", true, new("Rating"), new("Value"), Source),
                Table("Terminals", false, new("Terminal"), new("What")),
                Table("Codes", false, new("Display"), new("Look"), new("Symptom", LinksTo: PageKind.Symptom),
                    new("Means")),
                new("Coverage", SectionContent.Free, false, PageKind.Coverage),
            ], NeedsSummary: true),
        new(PageKind.Curve, "curves", [Kind, Id],
            [
                new("Table", SectionContent.Table, false), new("Steinhart–Hart", SectionContent.Table, false),
                new("Beta", SectionContent.Table, false), Sources,
            ]),
        new(PageKind.Meter, "meters", [Kind, Id],
            [Table("Ranges", true, new("Up to"), new("Limit of error"), Source), Sources], NeedsSummary: true),
        new(PageKind.Symptom, "symptoms",
            [Kind, Id, new("first-in", FieldType.Ids, false, RefersTo: PageKind.Access),
                new("danger", FieldType.Choice, false, ["fire", "shock", "gas", "water"]),
                new("stays-off", FieldType.YesNo, false), new("mode", FieldType.Choice, false, ["cooling", "heating"])],
            [List("Said as"), Table("Causes", true, new("Fault", LinksTo: PageKind.Fault), new("How often")), Cautions],
            NeedsSummary: true),
        new(PageKind.Fault, "faults",
            [
                Kind, Id, new("frequency", FieldType.Words, true), new("part", FieldType.Words, false),
                new("site", FieldType.YesNo, false), SeriesFilter,
                new("variety-of", FieldType.Ids, false, RefersTo: PageKind.Fault),
                new("left-by", FieldType.Ids, false, RefersTo: PageKind.Repair),
                new("can-burn", FieldType.YesNo, false),
            ],
            [
                List("Said as"), new("Seen", SectionContent.Any), new("Measured", SectionContent.Any),
                new("Looks the same", SectionContent.List, false, PageKind.Fault), Sentence("Proof"),
                new("Repair", SectionContent.Free, false, PageKind.Repair), new("Beware", SectionContent.Any),
                Sentence("Warranty"), Sources,
            ], NeedsSummary: true),
        new(PageKind.Check, "checks",
            [
                Kind, Id, Minutes, Access, new("leaves", FieldType.Ids, false, RefersTo: PageKind.Access), Who,
                SeriesFilter, new("calculation", FieldType.Words, false),
                new("stop", FieldType.List, false), new("stop-gas", FieldType.List, false),
                new("stop-wet", FieldType.List, false),
                new("stop-shock", FieldType.List, false), new("leave-off", FieldType.List, false),
                new("owners-only", FieldType.YesNo, false),
                new("after", FieldType.Ids, false, RefersTo: PageKind.Check),
                new("not-at", FieldType.Ids, false, RefersTo: PageKind.Symptom),
                new("modes", FieldType.List, false), new("only-at", FieldType.Ids, false, RefersTo: PageKind.Symptom),
                new("same-as", FieldType.Ids, false, RefersTo: PageKind.Check), new("needed", FieldType.YesNo, false),
                new("tells-mode", FieldType.YesNo, false),
            ],
            [
                Sentence("Ask"), List("How") with { TakesPictures = true }, List("Said as", false),
                Table("Readings", false, new("Reading"), new("Unit"), new("Possible"), new("Where"))
                    with { RequiredWith = "calculation" },
                Table("Expected", false, new("Input"), new("Value"), Source) with { RequiredWith = "calculation" },
                new("Outcomes", SectionContent.Table), new("Likelihoods", SectionContent.Table), Cautions, Sources,
            ]),
        new(PageKind.Repair, "repairs",
            [Kind, Id, Minutes, new("verify-minutes", FieldType.Minutes, true), Access, Who,
                new("parts", FieldType.List, false), new("changes", FieldType.Ids, false, RefersTo: PageKind.Check),
                new("may-not-hold", FieldType.YesNo, false),
                new("verify-in", FieldType.Ids, false, RefersTo: PageKind.Access),
                new("proof-always", FieldType.YesNo, false),
                new("before-trial", FieldType.Ids, false, RefersTo: PageKind.Check),
                new("unseen", FieldType.YesNo, false),
                new("left-to-others", FieldType.YesNo, false)],
            [List("Steps"), List("Said as", false), new("Verify", SectionContent.Free, false), Cautions, Sources]),
        new(PageKind.Refusal, "refusals",
            [Kind, Id, new("decision", FieldType.Choice, true, ["refuse", "off-topic"])],
            [
                List("Said as"), List("Sounds alike", false), Sentence("Answer"), Sentence("Safe way", false),
                Sentence("Owner's way", false),
            ]),
        new(PageKind.Coverage, "coverage",
            [
                Kind, Id, new("start", FieldType.Choice, true, ["installation", "purchase"]),
                new("register-days", FieldType.Count, true), new("labour-months", FieldType.Count, true),
                new("claim-belief", FieldType.Count, true),
            ],
            [
                Table("Parts", true, new("Part class"), new("Months"), new("Registered"), Source),
                Table("Classes", true, new("Part class"), new("Parts")),
                Table("Labour", true, new("Repair", LinksTo: PageKind.Repair), new("Minutes"), Source),
                Table("Excluded", false, new("Fault", LinksTo: PageKind.Fault), new("Reason")),
                List("Claim"), Sources,
            ], NeedsSummary: true),
        new(PageKind.Language, "languages",
            [
                Kind, Id, new("main", FieldType.YesNo, false),
                new("analyzer", FieldType.Choice, false, Analyzers.Names),
                new("decimal", FieldType.Choice, false, ["comma", "point"]),
            ],
            [
                List("Small words"), List("Chosen by", false), List("Not", false), List("All is well", false),
                Sentence("Answer", false), Table("Numbers", false, new("Word"), new("Value")),
                Table("Readings", false, new("Said"), new("Means", true)),
                Table("Figures", false, new("Word"), new("Say")),
            ]),
        new(PageKind.Question, "questions", [Kind, Id],
            [
                Sentence("Ask"), Table("Answers", true, new("Answer"), new("Shown")),
                Table("Told by", true, new("Symptom", LinksTo: PageKind.Symptom), new("Answer")),
            ]),
        new(PageKind.Term, "terms", [Kind, Id], [List("Said as"), Sentence("Meaning"), Sources]),
    ];

    /// <summary>The words that a front matter may give as its kind.</summary>
    public static IEnumerable<string> KindWords => All.Select(shape => shape.Word);

    /// <summary>The kinds that are one page at the top of the folder, without which nothing works.</summary>
    public static IEnumerable<PageShape> SinglePages => All.Where(shape => shape.Folder is null);

    public static PageShape Of(PageKind kind) => All[(int)kind];

    /// <summary>The kind whose folder holds a path, or null.</summary>
    public static PageKind? KindIn(string path) => All.FirstOrDefault(shape => shape.Holds(path))?.Kind;

    /// <summary>The kind that a word of the front matter names, or null.</summary>
    public static PageKind? KindNamed(string word) => All.FirstOrDefault(shape => shape.Word == word)?.Kind;
}
