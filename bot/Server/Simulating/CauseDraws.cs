using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Simulating;

/// <summary>Draws the fault behind a symptom on a series: each as often as it causes it.</summary>
internal sealed class CauseDraws(Library library)
{
    /// <summary>The faults that cause a symptom on a series; "none of these" left out.</summary>
    public IEnumerable<KeyValuePair<FaultId, double>> Of(Symptom symptom, string series) =>
        Any(symptom, series).Where(cause => cause.Key != FaultId.NoneOfThese);

    /// <summary>
    /// A cause, "none of these" among them; null when nothing else can cause the symptom there: it does not come up.
    /// </summary>
    public string? Draw(Symptom symptom, string series, Draws draws)
    {
        (FaultId Id, double Weight)[] causes =
            [.. Any(symptom, series).Select(cause => (cause.Key, cause.Value * library.Graph.Find(cause.Key)!.Weight))];
        return causes.Any(cause => cause.Id != FaultId.NoneOfThese)
            ? causes[draws.NextPlace([.. causes.Select(cause => cause.Weight)])].Id.Value
            : null;
    }

    private IEnumerable<KeyValuePair<FaultId, double>> Any(Symptom symptom, string series) => symptom.Causes
        .Where(cause => library.Faults[cause.Key].Series is { IsEmpty: true }
            || library.Faults[cause.Key].Series.Contains(series));
}
