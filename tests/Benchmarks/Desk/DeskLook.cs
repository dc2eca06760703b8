using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.WorkList;

namespace DxAssistant.Benchmarks.Desk;

/// <summary>One thing that a desk waits for.</summary>
/// <param name="Run">Does it once; given how often it was done before.</param>
internal sealed record DeskLook(string Name, Func<int, Task> Run)
{
    /// <param name="cases">How many cases there are.</param>
    public static ImmutableArray<DeskLook> All(ICaseStore store, int cases) =>
    [
        .. Queries(cases).Select(look => new DeskLook(look.Name, _ => store.SearchAsync(look.Query))),
        new("one case opened, its chain checked", _ => store.ReadAsync(DeskCases.Id(cases / 2))),
        new("cases of a serial number", _ => store.WithSerialAsync(DeskCases.Serial(cases / 2))),
        new("what the live list asks each second", _ => store.ListAsync(1)),
        new("a note written, then found by its word",
            run => NoteAndFindAsync(store, FormattableString.Invariant($"{store.GetType().Name}{cases}x{run:00}"),
                run)),
    ];

    private static ImmutableArray<(string Name, WorkQuery Query)> Queries(int cases)
    {
        string serial = DeskCases.Serial(cases / 2);
        return
        [
            ("the first page, last written in", new()),
            ("the first page, waiting longest", new(Order: WorkOrder.Oldest)),
            ("the first page, by unit", new(Order: WorkOrder.Series)),
            ("the first page, by fault", new(Order: WorkOrder.Fault)),
            ("a page in the middle", new(After: new WorkPlace(cases * 5L))),
            ("open ones of one unit", new(Series: "tarn-duo", Open: true)),
            ("ended ones with one fault", new(Fault: "indoor-fan-motor", Open: false)),
            ("open ones of a unit and a fault, by unit",
                new(Series: "ostvik-lc", Fault: "drain-blocked", Open: true, Order: WorkOrder.Series)),
            ("a serial number", new(serial)),
            ("a serial number, half typed", new(serial[..7])),
            ("its first three signs", new(serial[..3])),
            ("a telephone number", new(FormattableString.Invariant($"555 010 {cases / 2 % 10000:0000}"))),
            ("a name", new("halvorsen")),
            ("a name, two letters of it", new("ha")),
            ("a unit and a fault by words", new("tarn drain-blocked")),
            ("two words of a fifth of all cases", new("water drips")),
            ("three letters of a fifth of all cases", new("wat")),
            ("a word of every case", new("yes")),
            ("two letters of every case", new("ye")),
            ("one letter that is a word of no case", new("y")),
            ("four words of every case, waiting longest", new("yes tom low ladder", Order: WorkOrder.Oldest)),
            ("words of a note", new("ladder gate 42")),
            ("a word of every case, open ones of a unit", new("ladder", Series: "tarn-duo", Open: true)),
            ("a word nowhere", new("gyroscope")),
        ];
    }

    private static async Task NoteAndFindAsync(ICaseStore store, string word, int run)
    {
        string id = DeskCases.Id(run);
        await store.AppendAsync(id, await store.LastAsync(id), word,
            [new Conversation.Events.NoteWritten("dora", word)]);
        if ((await store.SearchAsync(new(word))).Lines is not [{ } found] || found.Id != id)
            throw new InvalidOperationException($"{word} is not found");
    }
}
