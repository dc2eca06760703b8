using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>One thing to know before a page can be begun.</summary>
/// <param name="Key">The name of the answer.</param>
/// <param name="Text">What is asked.</param>
/// <param name="Usual">Taken when nothing is said; null when an answer is needed, empty when none is.</param>
/// <param name="Choices">What may be said; empty when anything may.</param>
public sealed record DraftQuestion(string Key, string Text, string? Usual, ImmutableArray<string> Choices)
{
    /// <summary>True when several choices may be named, commas between.</summary>
    public bool TakesSeveral { get; init; }

    /// <summary>True when the answer must be a new id.</summary>
    public bool IsNewId { get; init; }

    /// <summary>True when the answer must be one question.</summary>
    public bool IsQuestion { get; init; }

    /// <summary>True when the answer must be minutes.</summary>
    public bool IsMinutes { get; init; }

    /// <summary>Whether it has to be asked after the answers before it; otherwise what is usual is taken.</summary>
    public Func<IReadOnlyDictionary<string, string>, bool> IsAsked { get; init; } = _ => true;

    /// <summary>What may be said, in one line; null when anything may, or a new id.</summary>
    public string? Listed => Choices.IsEmpty || IsNewId ? null : string.Join(", ", Choices);

    /// <summary>What is wrong with an answer; null when it will do.</summary>
    public string? ProblemWith(string answer)
    {
        if (answer.Length == 0) return Usual is null ? "an answer is needed" : null;
        if (answer.Any(c => c is '|' or '\n' or '[' or ']')) return "no bars, brackets or line ends, please";
        if (IsNewId)
            return !Constructs.Id.IsId(answer) ? Constructs.Id.Help : Choices.Contains(answer)
                ? $"{answer} is there already"
                : null;
        if (IsQuestion && (!answer.EndsWith('?') || answer.Count(c => c == '?') > 1))
            return "ask one question, and end it with its question mark";
        if (IsMinutes && Constructs.Number.Read(answer) is not >= 0) return "write minutes as a number, for example 5";
        if (Choices.IsEmpty) return null;
        string[] said = TakesSeveral ? answer.Split(',', StringSplitOptions.TrimEntries) : [answer];
        return said.FirstOrDefault(word => !Choices.Contains(word)) is { } strange
            ? $"{strange} is not one of them; {NearestWord.HintOrList(strange, Choices).Help}"
            : null;
    }
}
