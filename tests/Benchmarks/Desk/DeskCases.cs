using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Benchmarks.Desk;

/// <summary>
/// Cases as a desk has them, ten turns each: a complaint, the unit with its serial number, a person with a telephone
/// number, a note, checks with what they read, and of two in three the repair and the end.
/// </summary>
/// <remarks>
/// Replies are cut to the belief: the list does not read them, and whole ones would make a hundred thousand cases some
/// ten gigabytes.
/// </remarks>
internal static class DeskCases
{
    private const int AtOnce = 500;
    private static readonly string[] Series = ["brenholt-ws", "tarn-duo", "ostvik-lc", "veldarn-nord"];
    private static readonly string[] Complaints =
        ["does not heat", "water drips from the unit", "code b4 on the display", "fan is loud", "trips the breaker"];
    private static readonly string[] People = ["Ottery", "Halvorsen", "Quist", "Marlowe", "Brandt", "Teague", "Ingram"];
    private static readonly string[] Faults =
        ["sensor-room-air", "indoor-fan-motor", "drain-blocked", "outdoor-board", "supply-loose"];
    private static readonly string[] Checks =
        ["room-sensor-resistance", "fan-voltage", "drain-look", "supply-voltage", "link-voltage", "coil-look",
            "breaker-when", "filter-look"];

    public static string Id(int number) => FormattableString.Invariant($"case-{number}");

    public static string Serial(int number) => FormattableString.Invariant($"SN-{number:0000000}");

    /// <summary>Writes the cases of a range by their turns, many cases at once.</summary>
    public static async Task WriteAsync(ICaseStore store, Range cases)
    {
        foreach (int[] together in Numbers(cases).Chunk(AtOnce))
        {
            // A run that was broken off goes on where it ended.
            if (await store.LastAsync(Id(together[^1])) == 0)
                await Task.WhenAll(together.Select(number => WriteAsync(store, number)));
        }
    }

    /// <summary>Takes the cases of a range over from another store, as they are.</summary>
    public static Task CopyAsync(ICaseStore from, ICaseStore to, Range cases) => Parallel.ForEachAsync(
        Numbers(cases), new ParallelOptions { MaxDegreeOfParallelism = 8 },
        async (number, cancel) =>
        {
            if (await to.LastAsync(Id(number), cancel) == 0)
                await to.TakeOverAsync(Id(number), (await from.ReadRowsAsync(Id(number), cancel)).Rows, cancel);
        });

    private static IEnumerable<int> Numbers(Range cases) =>
        Enumerable.Range(cases.Start.Value, cases.End.Value - cases.Start.Value);

    private static async Task WriteAsync(ICaseStore store, int number)
    {
        long last = 0;
        foreach (var (turn, events) in Turns(number).Index())
        {
            await store.AppendAsync(Id(number), last, FormattableString.Invariant($"t{turn}"), events);
            last += events.Length;
        }
    }

    private static IEnumerable<ImmutableArray<CaseEvent>> Turns(int number)
    {
        string complaint = Complaints[number % 5];
        string series = Series[number % 4];
        string fault = Faults[number * 7 % 5];
        yield return [new Opened("v1"), Words("t0", complaint), new SeriesChosen(series),
            new SymptomReported(FormattableString.Invariant($"symptom-{number % 60}"), 1, complaint), Believed(fault)];
        yield return [new UnitNoted("tom", 1, series, null, Serial(number), null,
            FormattableString.Invariant($"{number % 300} Mill Lane"))];
        yield return [new PersonNoted("tom", 1, "owner", People[number % 7],
            FormattableString.Invariant($"555 010 {number % 10000:0000}"))];
        yield return [new NoteWritten("tom", FormattableString.Invariant($"ladder needed at gate {number % 97}"))];
        for (int check = 0; check < 5; check++) yield return Checked(number, check, fault);
        if (number % 3 == 0) yield return [Words("t9", "will order it"), Believed(fault)];
        else yield return [Words("t9", "yes"), new RepairDone($"replace-{fault}"),
            new RepairVerified($"replace-{fault}", fault, true), new Closed("repaired")];
    }

    private static ImmutableArray<CaseEvent> Checked(int number, int check, string fault)
    {
        string said = FormattableString.Invariant($"{number % 89 + check}.{number % 10}k at {15 + number % 20}C");
        return
        [
            Words(FormattableString.Invariant($"t{check + 4}"), check % 2 == 0 ? said : "yes"),
            new OutcomeSeen(Checks[(number + check) % 8], "low", [], check % 2 == 0 ? "too low" : null,
                check % 2 == 0 ? said : "yes"),
            Believed(fault),
        ];
    }

    private static Said Words(string turn, string text) => new(turn, "tom", new MessageBody.Words(text));

    private static Replied Believed(string fault) =>
        new(new Reply([], null, [new BeliefLine(fault, fault, 0.6)], null));
}
