using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Browser.Tests;

/// <summary>Conversations to be taken twice: those of the recorded pages, and generated ones.</summary>
internal static class Conversations
{
    private const string Mark = "**You:** ";

    private static readonly string[] Oddities =
    [
        "", "<script>alert(1)</script>", "E5: (", "yes", "no", "1.1", "OL", "2.1k at 24C", "e five", "¿dónde está?",
        "not cooling",
        "bypass the float switch", "-1e308 ohms", "room sensor unplugged, 2.1k at 24C, code b4", "no pasa aire", "why",
    ];

    /// <summary>The messages of every page of tests/Conversations, without the answers.</summary>
    public static IEnumerable<(string Name, ImmutableArray<MessageBody> Said)> Recorded() =>
        Directory.GetFiles(Path.Combine(Repository(), "tests", "Conversations"),
            "*.md").Order(StringComparer.Ordinal).Select(page =>
            (Path.GetFileName(page), File.ReadAllLines(page)
                .Where(line => line.StartsWith(Mark, StringComparison.Ordinal))
                .Select(line => Read(line[Mark.Length..])).ToImmutableArray()));

    /// <summary>Conversations in which anything is answered, sense more often than nonsense.</summary>
    public static IEnumerable<(string Name, ImmutableArray<MessageBody> Said)> Generated(Assistant assistant, int seed,
        int count, int turns)
    {
        var random = new Random(seed);
        for (int number = 1; number <= count; number++)
        {
            var said = ImmutableArray.CreateBuilder<MessageBody>();
            CaseState state = CaseState.New;
            said.Add(new MessageBody.Opening());
            for (int turn = 0; turn < turns; turn++)
            {
                state = Fold.Apply(state, assistant.Take(state, new Message($"{turn}", said[^1])).Events);
                said.Add(Anything(assistant, random, state.Question!));
            }

            yield return ($"seed {seed}, walk {number}", said.ToImmutable());
        }
    }

    private static MessageBody Anything(Assistant assistant, Random random, OpenQuestion question) =>
        random.Next(24) switch
    {
        0 => new MessageBody.Words(Oddities[random.Next(Oddities.Length)]),
        1 => new MessageBody.Command((CommandWord)random.Next(7)),
        2 => new MessageBody.Choice("q0", "stale"),
        3 when !question.Options.IsEmpty =>
            new MessageBody.Words(question.Options[random.Next(question.Options.Length)].Label),
        < 12 when !question.Fields.IsEmpty => new MessageBody.Readings(question.Id, [.. question.Fields.Select(field =>
            new FilledField(field.Label,
                string.Create(CultureInfo.InvariantCulture, $"{random.Next(500) / 10.0} {field.Unit}")))]),
        _ when question.Kind == QuestionKind.Complaint => new MessageBody.Words(Complaint(assistant, random)),
        _ when question.Options.IsEmpty => new MessageBody.Words("0.2 V"),
        _ => new MessageBody.Choice(question.Id, question.Options[random.Next(question.Options.Length)].Key),
    };

    private static string Complaint(Assistant assistant, Random random) =>
        assistant.Library.Symptoms.Values.ElementAt(random.Next(assistant.Library.Symptoms.Count)).Title.Text;

    private static MessageBody Read(string said) => said switch
    {
        ['[', .. var key, ']'] => new MessageBody.Choice(null, key),
        ['{', .. var form, '}'] => new MessageBody.Readings(null, [.. form.Split(';').Select(Field)]),
        ['/', .. var command] => new MessageBody.Command(
            Enum.Parse<CommandWord>(command.Replace("-", "", StringComparison.Ordinal), ignoreCase: true)),
        _ => new MessageBody.Words(said),
    };

    private static FilledField Field(string part)
    {
        int equals = part.IndexOf('=', StringComparison.Ordinal);
        return new FilledField(part[..equals].Trim(), part[(equals + 1)..].Trim());
    }

    private static string Repository()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "DxAssistant.sln"))) folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
