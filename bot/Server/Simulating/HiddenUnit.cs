using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating;

/// <summary>
/// A unit with a fault in it, and the person beside it: answers each question as such a unit and person do.
/// </summary>
/// <remarks>What is true of the unit stays true when it is looked at again; only the meter errs anew.</remarks>
internal sealed class HiddenUnit
{
    private const int Patience = 3;

    // How many checks of a hundred are left open in a play of doubts; common practice, no source.
    private const double LeftOpen = 0.25;

    private readonly Library _library;
    private readonly SimulatedCase _case;
    private readonly Draws _draws;
    private readonly Surroundings _surroundings;
    private readonly Dictionary<string, Condition> _conditions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _asked = new(StringComparer.Ordinal);
    private Trouble _now;

    public HiddenUnit(Library library, SimulatedCase simulated)
    {
        (_library, _case, _now) = (library, simulated, new Trouble(simulated.Symptom, simulated.Fault));
        _draws = new Draws(simulated.Seed);
        _surroundings = Surroundings.Drawn(_draws);
    }

    /// <summary>The fault that is in the unit now.</summary>
    public FaultId Fault => new(_now.Fault);

    /// <summary>Whether another fault shows once this one is cured.</summary>
    public bool HasMore => _now.Fault == _case.Fault && _case.Second is not null;

    /// <summary>What the person says or taps when this is asked.</summary>
    public MessageBody Answer(OpenQuestion question) => question.Kind switch
    {
        QuestionKind.Complaint => new MessageBody.Words(Complaint()),
        QuestionKind.Symptom or QuestionKind.First => Tap(question, _now.Symptom),
        QuestionKind.Series => Tap(question, _case.Series),
        QuestionKind.Role => Tap(question, _case.Role),
        QuestionKind.Access when question.Fields is [var field] => Fill([(field.Label, $"0 {field.Unit}")]),
        QuestionKind.Check => Look(question),
        QuestionKind.Proof => LookAgain(question, "without"),
        QuestionKind.Doubt => new MessageBody.Choice(null, question.Subject == _case.WrongSign ? "no" : "yes"),
        QuestionKind.LeftOut => LookAgain(question, "end"),
        QuestionKind.Contradiction => new MessageBody.Choice(null, "keep"),
        QuestionKind.Verify => new MessageBody.Choice(null, IsCuredBy(question.Subject) ? "yes" : "no"),
        QuestionKind.LeftOver => LeftOver(),
        _ => new MessageBody.Choice(null, question.Options[0].Key),
    };

    private string Complaint()
    {
        string told = _library.Symptoms[new SymptomId(_now.Symptom)].Title.Text;
        if (_now.Fault != _case.Fault) return told;
        if (_case.WrongSign is { } wrong) return $"{told}. maybe {_library.Symptoms[new SymptomId(wrong)].Title.Text}";
        return _case.VainPart is { } part ? $"{told}. replaced the {part}" : told;
    }

    // The second fault sets in when the first is cured: nothing that was seen before speaks of it.
    private MessageBody.Choice LeftOver()
    {
        if (!HasMore) return new MessageBody.Choice(null, "none");
        _now = _case.Second!;
        _conditions.Clear();
        _asked.Clear();
        return new MessageBody.Choice(null, "some");
    }

    private static MessageBody.Choice Tap(OpenQuestion question, string key) =>
        new(null, question.Options.Any(option => option.Key == key) ? key : question.Options[0].Key);

    private static MessageBody.Readings Fill(IEnumerable<(string Label, string Words)> fields) =>
        new(null, [.. fields.Select(field => new FilledField(field.Label, field.Words))]);

    private bool IsCuredBy(string repair) => _library.Graph.Find(new RepairId(repair))!.Fixes.Contains(Fault);

    // Somebody who is asked the same again and again says in the end what it looks like, and then that it is unclear.
    private MessageBody Look(OpenQuestion question)
    {
        int times = _asked[question.Subject] = _asked.GetValueOrDefault(question.Subject) + 1;
        if (times > 2 * Patience) return new MessageBody.Command(CommandWord.Unsure);
        Condition condition = ConditionOf(question.Subject);
        if (condition.LeftOpenBy is { } word) return new MessageBody.Command(word);
        CheckPage page = _library.Checks[new CheckId(question.Subject)];
        return condition.Readings.IsEmpty || question.Fields.IsEmpty || times > Patience
            ? new MessageBody.Choice(null, condition.Outcome)
            : Fill(page.Readings.Zip(condition.Readings, (field, reading) =>
                (field.Label, SimulatedMeter.Show(reading, field, condition.Setup!, _draws))));
    }

    // Who was not sure looks again; what could not be done still cannot be.
    private MessageBody.Choice LookAgain(OpenQuestion question, string orElse)
    {
        string? again = question.Options.Select(option => option.Key)
            .FirstOrDefault(key => _conditions.GetValueOrDefault(key)?.LeftOpenBy == CommandWord.Unsure);
        if (again is not null) _conditions[again] = Seen(again);
        return new MessageBody.Choice(null, again ?? orElse);
    }

    private Condition ConditionOf(string check)
    {
        if (_conditions.TryGetValue(check, out Condition? known)) return known;
        return _conditions[check] = _case.Play == Play.Doubts && !_library.Checks[new CheckId(check)].Needed
            && _draws.NextShare() < LeftOpen
            ? new Condition("", [], null)
            {
                LeftOpenBy = _draws.NextShare() < 0.5 ? CommandWord.Unsure : CommandWord.Cannot,
            }
            : Seen(check);
    }

    private Condition Seen(string check)
    {
        Check node = _library.Graph.Find(new CheckId(check))!;
        CheckPage page = _library.Checks[node.Id];
        int outcome = _draws.NextPlace(node.Row(Fault).AsSpan());
        return page.Calculation is { } calculation
            ? Measured(page, calculation, page.Outcomes[outcome])
            : new Condition(node.Outcomes[outcome].Value, [], null);
    }

    // An outcome may stand for several verdicts: one of those that a unit can really be in is drawn.
    private Condition Measured(CheckPage page, string calculation, AnswerOption outcome)
    {
        var setup = new ReadingSetup(
            page, _library.JudgeInputsFor(page, _library.Series[_case.Series]), _surroundings, _draws);
        List<VerdictKind> left = [.. outcome.Verdicts];
        while (left.Count > 0)
        {
            VerdictKind verdict = left[(int)(_draws.NextShare() * left.Count)];
            ImmutableArray<TrueReading> readings = ReadingSources.All[calculation].Draw(verdict, setup);
            if (!readings.IsEmpty) return new Condition(outcome.Id.Value, readings, setup);
            left.Remove(verdict);
        }

        return new Condition(outcome.Id.Value, [], null);
    }

    /// <summary>How the unit stands as far as one check is concerned.</summary>
    /// <param name="Readings">Empty when it is a matter of looking.</param>
    private sealed record Condition(string Outcome, ImmutableArray<TrueReading> Readings, ReadingSetup? Setup)
    {
        /// <summary>What the person says instead of an answer; null when there is an answer.</summary>
        public CommandWord? LeftOpenBy { get; init; }
    }
}
