using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Server.Commands.Asking;

/// <summary>Reads a sequencing problem.</summary>
internal static class PlanRequest
{
    // More minutes than any job takes; sums of them stay numbers.
    private const double MostMinutes = 1e9;

    // How far from 1 shares may sum: room for numbers written with few digits.
    private const double Rounding = 1e-6;

    /// <exception cref="RequestException">A part is missing, of the wrong type or out of its range.</exception>
    /// <exception cref="ArgumentException">The parts do not fit together.</exception>
    public static SequencingProblem Problem(JsonElement request)
    {
        ImmutableArray<Fault> all = Faults(request);
        ImmutableHashSet<FaultId> known = [.. all.Select(fault => fault.Id)];

        // A fault of prior 0 cannot be present, and a repair for nothing else is never useful.
        ImmutableArray<Fault> faults = [.. all.Where(fault => fault.Weight > 0)];
        ImmutableHashSet<FaultId> possible = [.. faults.Select(fault => fault.Id)];
        IEnumerable<Repair> repairs = Request.Items(request, "repairs").Select(repair => Repair(repair, known))
            .Select(repair => repair with { Fixes = [.. repair.Fixes.Where(possible.Contains)] })
            .Where(repair => !repair.Fixes.IsEmpty);
        return new SequencingProblem(
            Aim(request), faults, Request.Items(request, "checks").Select(check => Check(check, known)), repairs,
            PlanAccess.Read(request));
    }

    /// <summary>Minutes of a part, 0 to <see cref="MostMinutes"/>.</summary>
    /// <exception cref="RequestException">They are not.</exception>
    public static double Minutes(JsonElement number, string what) =>
        number.ValueKind == JsonValueKind.Number && number.GetDouble() is >= 0 and <= MostMinutes and double minutes
            ? minutes
            : throw new RequestException($"{what} must be a number from 0 to 1000000000, not {number.GetRawText()}");

    private static Objective Aim(JsonElement request) => Request.OptionalText(request, "objective") switch
    {
        null or "repair" => Objective.Repair,
        "isolate" => Objective.Isolate,
        var other => throw new RequestException($"\"objective\" is repair or isolate, not {other}"),
    };

    private static ImmutableArray<Fault> Faults(JsonElement request)
    {
        ImmutableArray<Fault> faults = [.. Request.Items(request, "faults").Select(Fault)];
        double sum = faults.Sum(fault => fault.Weight);
        if (!faults.IsEmpty && Math.Abs(sum - 1) > Rounding)
            throw new RequestException(
                string.Create(CultureInfo.InvariantCulture, $"the priors sum to {sum:0.######}, not to 1"));
        return faults;
    }

    private static Fault Fault(JsonElement fault)
    {
        FaultId id = new(Request.Text(fault, "id"));
        return new Fault(id, Share(Request.Part(fault, "prior"), $"the prior of fault {id}"));
    }

    private static Check Check(JsonElement check, ImmutableHashSet<FaultId> known)
    {
        CheckId id = new(Request.Text(check, "id"));
        ImmutableArray<OutcomeId> outcomes =
            [.. Request.Items(check, "outcomes").Select(outcome => new OutcomeId(Request.Name(outcome)))];
        if (outcomes.Distinct().Count() < outcomes.Length)
            throw new RequestException($"check {id} has an outcome twice");
        JsonElement likelihood = Request.Part(check, "likelihood");
        foreach (JsonProperty row in Request.Members(likelihood, "likelihood"))
            if (!known.Contains(new FaultId(row.Name)))
                throw new RequestException($"check {id}: there is no fault {row.Name}");
        return new Check(
            id, Minutes(Request.Part(check, "cost"), $"the cost of check {id}"), PlanAccess.Of(check), Role.Anyone,
            outcomes,
            known.ToImmutableSortedDictionary(fault => fault, fault => Row(likelihood, id, fault, outcomes)), []);
    }

    private static ImmutableArray<double> Row(
        JsonElement likelihood, CheckId check, FaultId fault, ImmutableArray<OutcomeId> outcomes)
    {
        if (!likelihood.TryGetProperty(fault.Value, out JsonElement row))
            throw new RequestException($"check {check} has no likelihoods of fault {fault}");
        foreach (JsonProperty value in Request.Members(row, fault.Value))
            if (!outcomes.Contains(new OutcomeId(value.Name)))
                throw new RequestException($"check {check} has no outcome {value.Name}");
        ImmutableArray<double> shares =
        [
            .. outcomes.Select(outcome => Share(
                Request.Part(row, outcome.Value), $"P({outcome} | {fault}) of check {check}")),
        ];
        return Math.Abs(shares.Sum() - 1) <= Rounding
            ? shares
            : throw new RequestException($"the likelihoods of check {check} given fault {fault} do not sum to 1");
    }

    private static Repair Repair(JsonElement repair, ImmutableHashSet<FaultId> known)
    {
        RepairId id = new(Request.Text(repair, "id"));
        ImmutableArray<FaultId> fixes =
            [.. Request.Items(repair, "fixes").Select(fault => new FaultId(Request.Name(fault))).Distinct()];
        foreach (FaultId fault in fixes)
            if (!known.Contains(fault)) throw new RequestException($"repair {id}: there is no fault {fault}");
        return new Repair(
            id, Minutes(Request.Part(repair, "cost"), $"the cost of repair {id}"),
            Minutes(Request.Part(repair, "verifyCost"), $"the verifyCost of repair {id}"),
            PlanAccess.Of(repair), Role.Anyone, fixes);
    }

    private static double Share(JsonElement number, string what) =>
        number.ValueKind == JsonValueKind.Number && number.GetDouble() is >= 0 and <= 1 and double share
            ? share
            : throw new RequestException($"{what} must be a number from 0 to 1, not {number.GetRawText()}");
}
