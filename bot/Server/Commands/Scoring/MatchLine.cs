using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>One line of a phrase set and what was made of it.</summary>
/// <param name="Expected">A fault id, "none" or "refuse".</param>
/// <param name="Not">Faults that the phrase rules out; none of them may come first.</param>
/// <param name="Plain">What the plain search finds, best first.</param>
internal sealed record MatchLine(
    string Said, string Expected, ImmutableArray<string> Not, MatchResult Answer, ImmutableArray<string> Plain)
{
    public const string None = "none";
    public const string Refuse = "refuse";

    /// <exception cref="RequestException">The line lacks something.</exception>
    public static MatchLine Of(JsonElement line, Matcher matcher, PlainSearch plain)
    {
        string said = Request.Text(line, "text");
        ImmutableArray<string> not = [.. Request.OptionalItems(line, "not").Select(fault => fault.GetString()!)];
        return new MatchLine(
            said, Request.Text(line, "fault"), not, matcher.Match(said), [.. plain.Faults(said)]);
    }

    public bool IsFault => Expected is not (None or Refuse);

    public ImmutableArray<string> Faults => [.. Answer.Candidates.Select(candidate => candidate.Id)];

    public string First => Faults is [var first, ..] ? first : Words.Kebab(Answer.Decision.ToString());

    /// <summary>How sure of its first fault the answer is; 0 when it names none.</summary>
    public double Sureness => Answer.Candidates is [var first, ..] ? first.Score : 0;

    public bool IsRefused => Answer.Decision == MatchDecision.Refuse;

    public bool RulesOutFirst => Faults is [var first, ..] && Not.Contains(first);

    public bool IsRight => Expected switch
    {
        None => Faults.IsEmpty && !IsRefused,
        Refuse => IsRefused,
        _ => First == Expected && !RulesOutFirst,
    };
}
