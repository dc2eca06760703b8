using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes a library from pages that all rules have passed.</summary>
internal sealed class LibraryBuilder
{
    private readonly Pages pages;
    private readonly Shelf shelf;

    private readonly KeptParts parts;
    private readonly string language;

    private LibraryBuilder(Pages pages, KeptParts parts, string language)
    {
        (this.pages, this.parts, this.language) = (pages, parts, language);
        shelf = Shelf.Empty with { Sources = SourcesOf(Single(PageKind.Sources)) };
        shelf = shelf with { Cautions = All(PageKind.Caution, PageBuilders.Caution, page => page.Id,
            StringComparer.Ordinal) };
        shelf = shelf with
        {
            Roles = RolePages().Select(page => page.Role)
                .ToImmutableSortedDictionary(role => role.Id, role => role, StringComparer.Ordinal),
        };
    }

    /// <param name="parts">What was made last time; null to make everything.</param>
    public static Library Build(ContentFolder folder, Pages pages, KeptParts? parts = null)
    {
        Library library = Build(folder, pages, parts ?? new KeptParts(), pages.In);
        return library with { Translations = library.Translations.Made() };
    }

    /// <summary>Makes the library of the main language; those of the others when they are first asked for.</summary>
    /// <param name="said">The pages as they read in a language.</param>
    public static Library BuildLate(ContentFolder folder, Pages pages, Func<string, Pages> said) =>
        Build(folder, pages, new KeptParts(), said);

    private static Library Build(ContentFolder folder, Pages pages, KeptParts parts, Func<string, Pages> said)
    {
        parts.Begin(pages);
        parts.Tidy(pages);
        ImmutableSortedDictionary<string, LanguagePage> languages = pages.OfKind(PageKind.Language)
            .Select(LanguageBuilder.Build)
            .ToImmutableSortedDictionary(page => page.Id, page => page, StringComparer.Ordinal);
        var builder = new LibraryBuilder(pages, parts, "");
        string version = parts.Mark.Of(folder);
        Library main = builder.Build(version, new GraphWriter(pages, builder.shelf, builder.Read, parts).Write());
        return main with
        {
            Languages = languages,
            Language = languages.Values.FirstOrDefault(page => page.IsMain),
            Translations = new Translations(
                languages.Values.Where(page => page.Analyzer is not null).Select(page => page.Id),
                tag => new LibraryBuilder(said(tag), parts, tag).Build(version, main.Graph)
                    with { Languages = languages, Language = languages[tag] }),
        };
    }

    private Library Build(string version, FaultGraph graph) => new()
    {
        Version = version,
        Graph = graph,
        Series = All(PageKind.Series, SeriesBuilder.Build, page => page.Id, StringComparer.Ordinal),
        Symptoms = All(PageKind.Symptom, PageBuilders.Symptom, page => page.Id),
        Faults = All(PageKind.Fault, PageBuilders.Fault, page => page.Id),
        Checks = All(PageKind.Check, CheckBuilder.Build, page => page.Id),
        Repairs = All(PageKind.Repair, PageBuilders.Repair, page => page.Id),
        Access = All(PageKind.Access, page => AccessBuilder.Build(page, shelf), page => page.Id),
        Cautions = shelf.Cautions,
        Curves = pages.OfKind(PageKind.Curve).Select(CurveOf)
            .ToImmutableSortedDictionary(curve => curve.Id, curve => curve, StringComparer.Ordinal),
        Meters = pages.OfKind(PageKind.Meter).Select(MeterOf)
            .ToImmutableSortedDictionary(meter => meter.Id, meter => meter, StringComparer.Ordinal),
        Coverage = All(PageKind.Coverage, CoverageBuilder.Build, page => page.Id, StringComparer.Ordinal),
        Refusals = All(PageKind.Refusal, PageBuilders.Refusal, page => page.Id, StringComparer.Ordinal),
        Questions = All(PageKind.Question, QuestionBuilder.Build, page => page.Id, StringComparer.Ordinal),
        Terms = All(PageKind.Term, PageBuilders.Term, page => page.Id, StringComparer.Ordinal),
        Sources = shelf.Sources,
        Roles = RolePages(),
        Glossary = [.. Single(PageKind.Glossary).Sections.SelectMany(group =>
            group.Table!.Rows.Select(PageBuilders.Glossary))],
        Phrases = PhrasesOf(Single(PageKind.Phrases)),
        LikelihoodWords = pages.Likelihoods,
        FrequencyWords = pages.Frequencies,
        Prices = pages.Prices,
        EarlierOdds = EarlierTable.Read(Single(PageKind.Words)),
        Settings = SettingsTable.Read(Single(PageKind.Words)),
    };

    private Page Single(PageKind kind) => pages.Single(kind)!;

    private PageReader Read(Page page) => new(page, pages, shelf);

    private ImmutableSortedDictionary<TId, T> All<TId, T>(
        PageKind kind, Func<PageReader, T> build, Func<T, TId> id, IComparer<TId>? order = null) where TId : notnull =>
        parts.Of(language, kind.ToString(), pages.OfKind(kind), page => build(Read(page)), id, order);

    private ImmutableArray<RolePage> RolePages()
    {
        PageReader page = Read(Single(PageKind.Roles));
        return [.. page.Rows("Roles", (row, section) => PageBuilders.Role(page, row, section))
            .OrderBy(role => role.Role.Rank).ThenBy(role => role.Role.Id, StringComparer.Ordinal)];
    }

    private CurvePage CurveOf(Page page)
    {
        CurveReader.Read(page, out SensorCurve? curve);
        PageReader reader = Read(page);
        return new CurvePage(page.Id, reader.Title, reader.Summary, curve!, reader.Sources);
    }

    private MeterPage MeterOf(Page page)
    {
        PageReader reader = Read(page);
        return new MeterPage(page.Id, reader.Title, reader.Summary, MeterReader.MeterOf(page)!, reader.Sources);
    }

    private static ImmutableSortedDictionary<string, Source> SourcesOf(Page page) =>
        page.Sections.ToImmutableSortedDictionary(
        section => Slug.Of(section.Name), section => SourceOf(page, section), StringComparer.Ordinal);

    private static Source SourceOf(Page page, Section section)
    {
        var place = new PagePlace(page.Path, section.Name);
        string about = string.Join(' ', section.Paragraphs.Select(text => text.Text));
        return new Source(Slug.Of(section.Name), new Passage(section.Name, place), new Passage(about, place));
    }

    private static PhraseBook PhrasesOf(Page page) => new(page.Sections.ToImmutableSortedDictionary(
        section => section.Name,
        section => new Passage(section.Paragraphs[0].Text, new PagePlace(section.Path ?? page.Path, section.Name)),
        StringComparer.Ordinal));
}
