using System.Collections.Immutable;
using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>Begins a page: asks what only the author knows, writes the rest.</summary>
public abstract class PageDraft
{
    private protected PageDraft(ContentFolder folder) => Pages = Content.Pages.Parse(folder);

    /// <summary>The kinds of pages that can be begun.</summary>
    public static ImmutableArray<string> Kinds { get; } = ["fault", "check", "symptom", "repair"];

    /// <summary>The draft of a kind.</summary>
    /// <exception cref="ArgumentException">There is no draft of the kind.</exception>
    public static PageDraft Of(string kind, ContentFolder folder) => kind switch
    {
        "fault" => new FaultDraft(folder),
        "check" => new CheckDraft(folder),
        "symptom" => new SymptomDraft(folder),
        "repair" => new RepairDraft(folder),
        _ => throw new ArgumentException($"there is no draft of a {kind}", nameof(kind)),
    };

    /// <summary>What is asked, in order.</summary>
    public abstract ImmutableArray<DraftQuestion> Questions { get; }

    private protected Pages Pages { get; }

    /// <summary>The page, and what to put on other pages so that it counts.</summary>
    /// <param name="answers">An answer to each question, by key.</param>
    public abstract DraftedPage Write(IReadOnlyDictionary<string, string> answers);

    private protected ImmutableArray<string> Ids(Syntax.PageKind kind) =>
        [.. Pages.Ids(kind).Order(StringComparer.Ordinal)];

    private protected DraftQuestion NewId(Syntax.PageKind kind, string word) =>
        new("id", $"Id of the {word}, small letters and hyphens, for example {Example(kind)}", null, Ids(kind))
        {
            IsNewId = true,
        };

    private protected static DraftQuestion Free(string key, string text, string? usual = null) =>
        new(key, text, usual, []);

    private protected DraftQuestion Access =>
        new("access", "Access state in which it is done", First(Ids(Syntax.PageKind.Access)),
            Ids(Syntax.PageKind.Access));

    private protected DraftQuestion Who =>
        new("who", "Least role that may do it", Ids(Syntax.PageKind.Roles)
            .Contains("technician") ? "technician" : First(Ids(Syntax.PageKind.Roles)), Ids(Syntax.PageKind.Roles));

    private protected static string Link(string folder, string id, string title) => $"[{title}](../{folder}/{id}.md)";

    private protected string TitleOf(Syntax.PageKind kind, string id) =>
        Pages.WithId(kind, id)?.Title?.Name ?? Title(id);

    private protected static string Title(string id) => char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');

    private protected static string Source => $"[Common practice](../sources.md#common-practice)";

    private protected static string ToDo(string what) => $"{PageSkeleton.ToDo} {what}";

    private static string? First(ImmutableArray<string> ids) => ids.IsEmpty ? null : ids[0];

    private static string Example(Syntax.PageKind kind) => kind switch
    {
        Syntax.PageKind.Fault => "drain-hose-blocked",
        Syntax.PageKind.Check => "drain-hose",
        Syntax.PageKind.Symptom => "water-below-indoor-unit",
        _ => "clear-drain-hose",
    };
}
