using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Simulating;

/// <summary>
/// Makes a plain case harder in one of the ways of <see cref="Play"/>, when its pages give the means.
/// </summary>
internal sealed class PlayDraws(Library library, SimulationOrder order, CauseDraws causes)
{
    // How many walks of a hundred are of each play, in the order of the plays; common practice, no source.
    private static readonly ImmutableArray<double> Shares = [40, 20, 10, 15, 15];

    public SimulatedCase Play(SimulatedCase plain, Draws draws)
    {
        Play play = order.Play ?? (Play)draws.NextPlace(Shares.AsSpan());
        SimulatedCase played = play switch
        {
            Simulating.Play.WrongSign => plain with { WrongSign = WrongSign(plain, draws) },
            Simulating.Play.VainRepair => plain with { VainPart = VainPart(plain, draws) },
            Simulating.Play.SecondFault => plain with { Second = Second(plain, draws) },
            _ => plain,
        };
        bool isSet = play is Simulating.Play.Plain or Simulating.Play.Doubts
            || played is { WrongSign: not null } or { VainPart: not null } or { Second: not null };
        return played with { Play = isSet ? play : Simulating.Play.Plain };
    }

    // One that could be mistaken for the true one, as it has a cause in common with it, but that this fault does not
    // give.
    private string? WrongSign(SimulatedCase plain, Draws draws)
    {
        Symptom told = library.Graph.Find(new SymptomId(plain.Symptom))!;
        return OneOf(draws, [.. library.Graph.Symptoms
            .Where(other => !other.Causes.ContainsKey(new FaultId(plain.Fault))
                && other.Causes.Keys.Any(fault => IsShared(told, fault)))
            .Where(other => CanShow(other, plain.Series))
            .Select(other => other.Id.Value)]);
    }

    private static bool IsShared(Symptom told, FaultId fault) =>
        fault != FaultId.NoneOfThese && told.Causes.ContainsKey(fault);

    private string? VainPart(SimulatedCase plain, Draws draws) => OneOf(draws,
    [
        .. causes.Of(library.Graph.Find(new SymptomId(plain.Symptom))!, plain.Series)
            .Where(cause => cause.Key.Value != plain.Fault && library.Faults[cause.Key].Part is not null)
            .Where(cause => !library.Graph.RepairsOf(cause.Key)
                .Any(repair => repair.Fixes.Contains(new FaultId(plain.Fault))))
            .Select(cause => library.Faults[cause.Key].Part!).Distinct(StringComparer.Ordinal),
    ]);

    private Trouble? Second(SimulatedCase plain, Draws draws)
    {
        if (plain.Fault == FaultId.NoneOfThese.Value) return null;
        string? symptom = OneOf(draws, [.. library.Graph.Symptoms
            .Where(other => other.Id.Value != plain.Symptom && CanShow(other, plain.Series))
            .Select(other => other.Id.Value)]);
        return symptom is null ? null
            : causes.Draw(library.Graph.Find(new SymptomId(symptom))!, plain.Series, draws) is { } fault
                && fault != plain.Fault && fault != FaultId.NoneOfThese.Value
                ? new Trouble(symptom, fault)
                : null;
    }

    private bool CanShow(Symptom symptom, string series) =>
        SimulatedCases.CanShow(library, series, symptom.Id) && causes.Of(symptom, series).Any();

    private static string? OneOf(Draws draws, string[] all) =>
        all.Length == 0 ? null : all[(int)(draws.NextShare() * all.Length)];
}
