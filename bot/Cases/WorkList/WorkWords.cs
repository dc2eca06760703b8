using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Cases.WorkList;

/// <summary>The words by which a case is found.</summary>
internal static partial class WorkWords
{
    private const int MostTerms = 8;

    /// <summary>
    /// All that was said, read, chosen or concluded in a turn. What the program asked is left out: it stands in
    /// every case.
    /// </summary>
    public static string Of(ImmutableArray<CaseEvent> events)
    {
        string words = string.Join(' ', events.SelectMany(WordsOf).Where(found => found.Length > 0));
        var numbers = Spaced().Matches(words).Select(match => Digits(match.Value)).ToList();
        return numbers.Count == 0 ? words : $"{words} {string.Join(' ', numbers)}";
    }

    /// <summary>The words of a search, lower case; each is the beginning of a word in the log, unless it is one letter
    /// long.</summary>
    public static ImmutableArray<string> Terms(string text)
    {
        string searched = Spaced().Match(text.Trim()) is { Success: true } number && number.Length == text.Trim().Length
            ? Digits(text) : text;
        return [.. Split(searched).Take(MostTerms)];
    }

    /// <summary>A text in words, as the index cuts it.</summary>
    public static IEnumerable<string> Split(string text) =>
        Word().Matches(text).Select(match => match.Value.ToLowerInvariant());

    private static IEnumerable<string> WordsOf(CaseEvent happened) => happened switch
    {
        Said { Body: MessageBody.Words words } => [words.Text],
        Said { Body: MessageBody.Readings readings } => readings.Fields.Select(field => field.Words),
        Said { Body: MessageBody.Choice choice } => [choice.Key],
        CodeReported code => [code.Code],
        SeriesChosen chosen => [chosen.Series],
        SymptomReported symptom => [symptom.Symptom, symptom.Words],
        OutcomeSeen seen => [seen.Check, seen.Verdict ?? "", seen.Words],
        RepairDone done => [done.Repair],
        RepairTriedBefore tried => [tried.Repair, tried.Words],
        RepairVerified verified => [verified.Fault],
        FaultBeside beside => [beside.Fault],
        UnitNoted unit =>
            [unit.Series ?? "", unit.Model ?? "", unit.Serial ?? "", SerialPattern.Bare(unit.Serial ?? ""), unit.Site
                ?? ""],
        PersonNoted person => [person.Name, person.Phone ?? ""],
        NoteWritten note => [note.Text],
        Replied replied => replied.Reply.Segments.Where(segment => segment.Kind == SegmentKind.Conclusion)
            .Select(segment => segment.Text),
        _ => [],
    };

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));

    [GeneratedRegex(@"[\p{L}\p{N}]+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    // A telephone number is found however it is spaced.
    [GeneratedRegex(@"\+?[0-9(][0-9 ()/.\-]{5,}[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Spaced();
}
