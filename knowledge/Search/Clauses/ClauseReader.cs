using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>Parts what a message complains of from what it rules out ("drain is clear but the fan is dead").</summary>
internal static class ClauseReader
{
    private static readonly FrozenSet<string> Turns = new[]
    {
        "and", "but", "so", "yet", "though", "although", "however", "except", "because", "since", "then", "while",
        "still",
        "plus", "turns", "anyway", "yes", "only",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Words after which a healthy word says nothing of the present.</summary>
    private static readonly FrozenSet<string> Unreal = new[]
    {
        "need", "needs", "should", "must", "when", "while", "if", "until", "after", "before", "stop", "stopped",
        "gotta", "only",
        "for", "with", "at", "back", "sometimes", "not", "needed", "hardly", "barely", "badly", "poorly", "partly",
        "half", "supposed", "nobody", "forgot", "ever",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The last words of "on this job", "in here", "fitted".</summary>
    private static readonly FrozenSet<string> Here = new[] { "here", "job", "fitted", "installed", "install", "one",
        "model", "site" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Others =
        new[] { "other", "others", "rest", "remaining" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Back =
        new[] { "that", "thats", "they", "theyre", "those", "both" }.ToFrozenSet(StringComparer.Ordinal);

    private const int LongestPlace = 4;

    public static ClauseReading Read(ImmutableArray<Token> tokens)
    {
        var ruledOut = new HashSet<Token>(ReferenceEqualityComparer.Instance);
        var mentions = ImmutableArray.CreateBuilder<RuledOut>();
        List<Token> listed = [];
        List<Token> subject = [];
        var cured = Cures.At(tokens);
        List<List<Token>> clauses = [.. Clauses(tokens)];
        for (var place = 0; place < clauses.Count; place++)
        {
            var clause = clauses[place];
            var before = mentions.Count;
            if (Beliefs.MistakenIn(clause, clauses.Skip(place + 1)) is { Count: > 0 } believed)
            {
                ruledOut.UnionWith(believed);
                mentions.Add(new RuledOut([.. believed], IllIn(believed)) { IsOutright = true });
            }
            if (Substitutes.In(clause, clauses.Skip(place + 1)) is { Count: > 0 } substituted)
            {
                ruledOut.UnionWith(substituted);
                mentions.Add(new RuledOut([.. substituted], []) { IsOutright = true });
            }
            for (var i = 0; i < clause.Count; i++)
            {
                var scope = Scope(clause, i, out var implied);
                if (scope.Count == 0 || (clause[i].Position < cured && IsWork(clause, i)))
                    continue;
                ruledOut.UnionWith(scope);
                if (IsList(listed, clause, scope))
                {
                    ruledOut.UnionWith(listed);
                    mentions.Add(new RuledOut([.. listed], [.. implied]));
                }
                List<Token> meant = RefersBack(clause, i, scope) ? subject : [];
                ruledOut.UnionWith(meant);
                mentions.Add(new RuledOut([.. meant, .. scope.Select(Named)], [.. implied])
                {
                    IsOutright = IsOutright(clause[i]),
                });
                mentions.AddRange(Charging.DoneRight(clause[i], scope));
            }
            subject = clause.Any(IsComplaint) ? [] : [.. clause.Where(IsPart)];
            listed = mentions.Count == before && IsBareName(clause) ? [.. clause.Where(Counts)] : [];
        }
        var silent = ruledOut.Select(token => token.Position).ToHashSet();
        return new ClauseReading(
            [.. tokens.Where(token => !ruledOut.Contains(token)
                && !(token.Role == TokenRole.Aside && silent.Contains(token.Position)))],
            mentions.ToImmutable());
    }

    private static bool IsOutright(Token token) => token.Role == TokenRole.RuledOut || token.IsNegated;

    /// <summary>
    /// "46 ohm all round so that's good", "the filter? cleaned it": what is well was named in the clause before.
    /// </summary>
    private static bool RefersBack(List<Token> clause, int at, List<Token> scope) =>
        !scope.Any(IsPart) && (clause.Take(at).Any(token => Back.Contains(token.Said)) || IsAllSaidFirst(clause, at));

    /// <summary>
    /// "cleaned it", "is clean as a whistle": before the word nothing of meaning stands, and nothing is complained of.
    /// </summary>
    private static bool IsAllSaidFirst(List<Token> clause, int at) =>
        clause[at].Role == TokenRole.Main && !States.Working.Contains(clause[at].Term) && clause[0].Said != "still"
            && (at == 0 || clause[at - 1].Said != "a")
        && !clause.Any(token => token.Position < clause[at].Position && Counts(token))
        && !clause.Any(token => IsPart(token) || IsComplaint(token));

    private static bool IsPart(Token token) =>
        token is { IsConcept: true, IsNegated: false, Role: TokenRole.Main } && !States.Ill.Contains(token.Term)
            && !States.IsWell(token.Term);

    /// <summary>"air and discharge ok": what is well of the last of a list is well of all of it.</summary>
    private static bool IsList(List<Token> listed, List<Token> clause, List<Token> scope) =>
        listed.Count > 0 && clause[0].Said == "and" && scope[0] == clause.First(Counts);

    /// <summary>A part or two, of which nothing is said.</summary>
    private static bool IsBareName(List<Token> clause)
    {
        const int longestName = 3;
        var main = clause.Where(token => token.Role == TokenRole.Main).ToList();
        return main.Count is > 0 and <= longestName
            && main.Count == clause.Count(token => token.Role != TokenRole.Aside)
            && !main.Any(token => IsComplaint(token) || States.IsWell(token.Term)
                || States.Working.Contains(token.Term));
    }

    private static IEnumerable<List<Token>> Clauses(ImmutableArray<Token> tokens)
    {
        var clause = new List<Token>();
        for (var at = 0; at < tokens.Length; at++)
        {
            var token = tokens[at];
            if (clause.Count > 0 && (token.StartsClause || IsTurn(clause, token)) && !IsCondition(tokens, at))
            {
                yield return clause;
                clause = [];
            }
            clause.Add(token);
        }
        yield return clause;
    }

    /// <summary>"but", and the "it" of "not the filter it is the coil".</summary>
    private static bool IsTurn(List<Token> clause, Token token) =>
        token.Role == TokenRole.Filler
        && (Turns.Contains(token.Said)
            || (token.Said == "it" && clause.Any(other => other.Role == TokenRole.RuledOut)));

    /// <summary>"only if I block the sun", "because of low gas", "everything but the coil".</summary>
    private static bool IsCondition(ImmutableArray<Token> tokens, int at) =>
        at > 0 && at + 1 < tokens.Length && !tokens[at].StartsClause
        && ((tokens[at].Said, tokens[at + 1].Said) is ("only", "if" or "when") or ("because", "of")
            || (tokens[at - 1].Said, tokens[at].Said) is ("everything" or "all" or "anything", "but" or "except"));

    private static List<Token> Scope(List<Token> clause, int at, out string[] implied)
    {
        implied = [];
        var token = clause[at];
        if (token.Role == TokenRole.RuledOut && States.Ill.Contains(token.Term))
            return IllDenied(clause, at, out implied);
        if (token.Role == TokenRole.RuledOut)
            return at > 0 && clause[at - 1].Role == TokenRole.RuledOut ? [] : Forward(clause, at, clause.Count);
        if (token.Role != TokenRole.Main)
            return [];
        if (token.IsNegated)
            return States.Ill.Contains(token.Stem) || IllOfSame(clause, at) is not null
                ? IllDenied(clause, at, out implied)
                : IsAbsent(clause, at) ? Forward(clause, at, clause.Count) : NoneIs(clause, at, out implied);
        if (IsUnreal(clause, at) || OtherSense.Is(clause, at) || IsOfOthers(clause, at) || IsAllBut(clause, at))
            return [];
        if (States.RuledOutBy(token.Term, clause.Take(at).Select(other => other.Term)) is { } rules
            && !IsPressure(clause, at))
        {
            implied = rules;
            return token.Said switch
            {
                "new" or "fresh" => NewPart(clause, at),
                "matches" => [.. Backward(clause, at), .. Forward(clause, at, clause.Count)],
                _ => Around(clause, at),
            };
        }
        if (IsWork(clause, at) && !clause.Any(other => other.Term == "set"))
            return Around(clause, at, forwardFirst: !FollowsPart(clause, at) && !IsPassive(clause, at));
        if (!States.Working.Contains(token.Term) && !States.AtWork.Contains(token.Said))
            return [];
        if (States.Moving.Contains(token.Said))
            implied = [.. States.Immovable];
        if (IsRotation(token))
            return [];
        return IsElsewhere(clause, at)
            ? [.. Backward(clause, at), .. Forward(clause, at, clause.Count)]
            : IsLastOfMeaning(clause, at) || IsMoved(clause, at) ? Around(clause, at) : [];
    }

    /// <summary>"cleaned", and the last word of "deep cleaned".</summary>
    private static bool IsWork(List<Token> clause, int at) =>
        (States.Done.Contains(LastWord(clause[at].Said))
            && !clause[at].Said.StartsWith("not ", StringComparison.Ordinal) && !IsWeighing(clause, at))
            || Swaps.Is(clause, at);

    /// <summary>"weighed 2.1 kg against a plate of 1.35" tells what was found, and not that all is well.</summary>
    private static bool IsWeighing(List<Token> clause, int at) =>
        clause[at].Said == "weighed"
            && clause.Skip(at + 1).Take(2).Any(token => token.Said.Length > 0 && char.IsAsciiDigit(token.Said[0]));

    /// <summary>"L2 is dead, the other two phases are fine": a phase is missing all the same.</summary>
    private static bool IsOfOthers(List<Token> clause, int at) =>
        clause.Take(at).FirstOrDefault(Counts) is { Term: "phase" } first
            && clause.TakeWhile(token => token != first).Any(token => Others.Contains(token.Said));

    /// <summary>"everything but the coil checks out".</summary>
    private static bool IsAllBut(List<Token> clause, int at) =>
        clause.Take(at).Skip(1).Any(token => token.Said is "but" or "except");

    private static string LastWord(string said) => said[(said.LastIndexOf(' ') + 1)..];

    /// <summary>"barrel and coil were deep cleaned in march".</summary>
    private static bool IsPassive(List<Token> clause, int at) =>
        clause.Take(at).Any(token => token.Role == TokenRole.Main) && clause.Take(at).TakeLast(3)
            .Any(token => token.Said is "was" or "were" or "been" or "is" or "are" or "got");

    /// <summary>"no leg is missing".</summary>
    private static List<Token> NoneIs(List<Token> clause, int at, out string[] implied)
    {
        var next = clause.Skip(at + 1)
            .FirstOrDefault(token => token.Position > clause[at].Position && token.Role == TokenRole.Main);
        implied = next is not null && States.Ill.Contains(next.Term) && (next.Said == "missing" || IsToBe())
            ? [next.Term]
            : [];
        return implied.Length == 0 ? [] : [clause[at], next!];

        bool IsToBe() =>
            clause.Any(token => token.Position < next!.Position && token.Position > clause[at].Position
                && token.Said is "is" or "are" or "was" or "were");
    }

    /// <summary>"thermistor verified against ice": what was checked stands before the word.</summary>
    private static bool FollowsPart(List<Token> clause, int at) =>
        clause.Take(at).Any(token => token is { IsConcept: true, Role: TokenRole.Main }
            && token.Position == clause.Take(at).Where(other => other.Position < clause[at].Position)
                .Select(other => other.Position).LastOrDefault(-1));

    /// <summary>
    /// Normal pressure at a switch that is open speaks against the switch: it is evidence, not a part ruled out.
    /// </summary>
    private static bool IsPressure(List<Token> clause, int at) =>
        at + 1 < clause.Count && clause[at + 1].Term == "pressur" && clause[at + 1].Position == clause[at].Position;

    /// <summary>"no pump on this job", "with no pump": what is not there is not to blame.</summary>
    private static bool IsAbsent(List<Token> clause, int at)
    {
        if (States.Optional.Contains(clause[at].Stem)
            && clause.Take(at).Where(token => token.Position < clause[at].Position).TakeLast(2)
                .Select(token => token.Said) .SequenceEqual(["with", "not"]))
            return true;
        ImmutableArray<string> after =
            [.. clause.Skip(at + 1).Where(token => token.Position != clause[at].Position).Select(token => token.Said)];
        return after is [.., var last] && Here.Contains(last) && after.Length <= LongestPlace;
    }

    /// <summary>The part that "no pump" names.</summary>
    private static Token Named(Token token) =>
        token.IsNegated && !States.Ill.Contains(token.Stem) ? token with { Term = token.Stem } : token;

    private static List<Token> IllDenied(List<Token> clause, int at, out string[] implied)
    {
        if (CauseDenied(clause, at) is { Count: > 0 } cause)
        {
            implied = [.. IllIn(cause)];
            return cause;
        }
        var ill = States.Ill.Contains(clause[at].Stem) ? clause[at].Stem : IllOfSame(clause, at)!;
        implied = States.AnyIll.Contains(ill) ? [] : [ill];
        var before = Backward(clause, at);
        return [.. before, .. before.Count == 0 ? Forward(clause, at, EndOfDenied(clause, at)) : WithSame(clause, at)];
    }

    /// <summary>What is ill in "no phase missing", where the glossary knows the words as one thing.</summary>
    private static string? IllOfSame(List<Token> clause, int at) =>
        clause.Find(token => token.Position == clause[at].Position && token.Role == TokenRole.Main
            && States.Ill.Contains(token.Term))?.Term;

    /// <summary>A token and the others of the same words.</summary>
    private static List<Token> WithSame(List<Token> clause, int at) =>
        [.. clause.Where((token, place) => place == at || (token.Position == clause[at].Position && Counts(token)))];

    /// <summary>
    /// "not overheating module thermistor is open": what is said to be something after that is another matter.
    /// </summary>
    private static int EndOfDenied(List<Token> clause, int at)
    {
        var verb = clause.FindIndex(at, token => token.Role == TokenRole.Filler
            && token.Said is "is" or "are" or "was" or "were" or "reads" or "has");
        return verb > at + 1 && clause.Take(verb).Skip(at + 1).Any(IsPart)
            ? clause.FindIndex(at, token => token.Position > clause[at].Position)
            : clause.Count;
    }

    /// <summary>"not frozen by low gas" rules out the gas and not the ice.</summary>
    private static List<Token> CauseDenied(List<Token> clause, int at)
    {
        var by = clause.FindIndex(at, token => token.Role == TokenRole.Filler
            && token.Said is "by" or "from" or "because" or "due");
        return by < 0 || by - at > LongestPlace ? [] : [.. clause.Skip(by + 1).Where(Counts)];
    }

    private static ImmutableArray<string> IllIn(List<Token> tokens) =>
        [.. tokens.Where(token => States.Ill.Contains(token.Term)).Select(token => token.Term)
            .Distinct(StringComparer.Ordinal)];

    /// <summary>"new motor", but not "new install" or "new unit".</summary>
    private static List<Token> NewPart(List<Token> clause, int at)
    {
        var next = clause.Skip(at + 1).FirstOrDefault(token => token.Role == TokenRole.Main);
        if (next is null)
            return Around(clause, at);
        return next.Term.StartsWith("instal", StringComparison.Ordinal)
            || clause.Skip(at + 1).Any(token => IsComplaint(token) && !Substitutes.IsNoChange(token))
            ? []
            : Forward(clause, at, clause.Count);
    }

    private static List<Token> Around(List<Token> clause, int at, bool forwardFirst = false)
    {
        var after = Forward(clause, at, clause.Count);
        var before = Backward(clause, at);
        var afterHasMore = after.Count > 1;
        if (forwardFirst ? afterHasMore : before.Count == 0)
            return after;
        return [.. before, clause[at]];
    }

    /// <summary>From a token to the next complaint.</summary>
    private static List<Token> Forward(List<Token> clause, int at, int end) =>
        [clause[at], .. clause.Take(end).Skip(at + 1)
            .TakeWhile(token => !IsComplaint(token) || Charging.IsVacuum(clause, token)).Where(Counts)];

    /// <summary>The tokens of meaning before a token, back to the last complaint.</summary>
    private static List<Token> Backward(List<Token> clause, int at)
    {
        var before = clause.Take(at).Reverse()
            .TakeWhile(token => !IsComplaint(token) || Charging.IsVacuum(clause, token)).Where(Counts).ToList();
        before.Reverse();
        return before;
    }

    private static bool Counts(Token token) => token.Role is TokenRole.Main or TokenRole.Aside or TokenRole.RuledOut;

    private static bool IsComplaint(Token token) =>
        token.Role == TokenRole.Main && (token.IsNegated || States.Ill.Contains(token.Term));

    private static bool IsUnreal(List<Token> clause, int at)
    {
        for (var i = Math.Max(0, at - 3); i < at; i++)
        {
            if (Unreal.Contains(clause[i].Said))
                return true;
        }
        return false;
    }

    /// <summary>"works on the other heads".</summary>
    private static bool IsElsewhere(List<Token> clause, int at) =>
        clause.Skip(at + 1)
            .FirstOrDefault(token => token.Position > clause[at].Position
                && token.Said is not ("on" or "with" or "in" or "the" or "for"))?.Said
            is "other" or "others" or "another";

    /// <summary>"reversed rotation" tells of no part at work.</summary>
    private static bool IsRotation(Token token) => token.Said.EndsWith("ion", StringComparison.Ordinal);

    /// <summary>"slide moves when I put a magnet on".</summary>
    private static bool IsMoved(List<Token> clause, int at) =>
        States.Moving.Contains(clause[at].Said) && at + 1 < clause.Count && clause[at + 1].Said == "when";

    private static bool IsLastOfMeaning(List<Token> clause, int at) =>
        clause.Skip(at + 1).All(token => !Counts(token) || token.Position == clause[at].Position);
}
