using System.Diagnostics;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;

namespace DxAssistant.Benchmarks.Growing;

/// <summary>Compiles a made-up library of one size, edits it, and talks on it.</summary>
internal static class LibraryRun
{
    private const int Edits = 9;
    private const int Talks = 40;
    private const int TurnsEach = 10;

    public static LibraryPoint Of(int faults)
    {
        ContentFolder folder = SyntheticLibrary.Of(faults);
        long before = GC.GetTotalMemory(forceFullCollection: true);
        var (library, compile) = Timed(() => Clean(ContentCompiler.Compile(folder)));
        double memory = Megabytes(before);
        before = GC.GetTotalMemory(forceFullCollection: true);
        var (assistant, index) = Timed(() => new Assistant(library));
        double indexMemory = Megabytes(before);
        var (words, taps) = Talk(assistant, faults / SyntheticLibrary.FaultsEach);
        GC.KeepAlive(assistant);
        return new LibraryPoint(
            faults, folder.Pages.Length, compile, Edit(folder), memory, index, indexMemory, Middle(words), Middle(taps),
            At(taps, 0.99));
    }

    private static double Edit(ContentFolder folder)
    {
        var compiler = new IncrementalCompiler();
        Clean(compiler.Compile(folder));
        return Middle([.. Enumerable.Range(0, Edits).Select(edit =>
        {
            folder = SyntheticLibrary.Edited(folder, edit);
            return Timed(() => Clean(compiler.Compile(folder))).Milliseconds;
        })]);
    }

    // Symptoms from all over the library; the first conversations only make the program have compiled what is used
    // often.
    private static (List<double> Words, List<double> Taps) Talk(Assistant assistant, int symptoms)
    {
        List<double> words = [], taps = [];
        for (int talk = 0; talk < 2 * Talks; talk++)
        {
            if (talk == Talks) (words, taps) = ([], []);
            int symptom = (int)((long)talk * 7919 % symptoms);
            CaseState state = assistant.Take(CaseState.New, new Message("opening", new MessageBody.Opening())).After!;
            state = Take(assistant, state, new MessageBody.Words(SyntheticLibrary.Complaint(symptom)), words);
            for (int turn = 0; turn < TurnsEach
                && state is { ClosedHow: null, Question: { Options.IsEmpty: false } question }; turn++)
                state = Take(assistant, state,
                    new MessageBody.Choice(question.Id, question.Options[talk / 7 % question.Options.Length].Key),
                    taps);
        }

        return (words, taps);
    }

    private static CaseState Take(Assistant assistant, CaseState state, MessageBody body, List<double> times)
    {
        var (turn, milliseconds) =
            Timed(() => assistant.Take(state, new Message(FormattableString.Invariant($"t{times.Count}"), body)));
        times.Add(milliseconds);
        return turn.After!;
    }

    private static Library Clean(CompileResult result) =>
        result.Library
            ?? throw new InvalidOperationException(
                string.Join('\n', result.Diagnostics.DistinctBy(found => found.Name)));

    private static (T Result, double Milliseconds) Timed<T>(Func<T> work)
    {
        long start = Stopwatch.GetTimestamp();
        T result = work();
        return (result, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    private static double Megabytes(long before) => (GC.GetTotalMemory(forceFullCollection: true) - before) / 1e6;

    private static double Middle(List<double> all) => At(all, 0.5);

    private static double At(List<double> all, double share) =>
        all.Order().ElementAt(Math.Min(all.Count - 1, (int)(share * all.Count)));
}
