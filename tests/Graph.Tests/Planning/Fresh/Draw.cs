using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning.Fresh;

/// <summary>Draws the parts of a problem from a seed.</summary>
internal sealed class Draw(int seed)
{
    private static readonly double[] Errors = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5];

    private readonly Random random = new(seed);

    /// <summary>From the least to the most, both included.</summary>
    public int Whole(int least, int most) => random.Next(least, most + 1);

    public double Share(double least, double most) => Math.Round(least + random.NextDouble() * (most - least), 2);

    public bool Happens(double probability) => random.NextDouble() < probability;

    /// <summary>Faults with priors that differ up to tenfold and sum to 1.</summary>
    public ImmutableArray<Fault> Faults(params string[] ids)
    {
        double[] weights = [.. ids.Select(_ => 0.1 + random.NextDouble())];
        double sum = weights.Sum();
        return [.. ids.Select((id, place) => new Fault(new FaultId(id), weights[place] / sum))];
    }

    public ImmutableArray<Fault> Faults(int count) =>
        Faults([.. Enumerable.Range(1, count).Select(number => $"f{number:00}")]);

    /// <summary>Pass or fail, without error.</summary>
    public Check Perfect(string id, ImmutableArray<Fault> faults, ImmutableArray<AccessId> access) =>
        PassFail(id, Whole(1, 10), access, faults, _ => random.Next(2));

    /// <summary>Two or three outcomes, each fault with errors of its own.</summary>
    public Check Noisy(string id, ImmutableArray<Fault> faults, ImmutableArray<AccessId> access)
    {
        string[] outcomes = Happens(0.7) ? ["pass", "fail"] : ["low", "normal", "high"];
        return new Check(
            new CheckId(id), Whole(1, 10), access, Role.Anyone, [.. outcomes.Select(name => new OutcomeId(name))],
            faults.ToImmutableSortedDictionary(fault => fault.Id, _ => Row(outcomes.Length)), []);
    }

    /// <param name="fails">P(fail | the fault at a place).</param>
    public static Check PassFail(
        string id, double minutes, ImmutableArray<AccessId> access, ImmutableArray<Fault> faults,
        Func<int, double> fails) =>
        new(
            new CheckId(id), minutes, access, Role.Anyone, [new OutcomeId("pass"), new OutcomeId("fail")],
            faults.Select((fault, place) => (fault.Id, fails: fails(place))).ToImmutableSortedDictionary(
                row => row.Id, row => ImmutableArray.Create(1 - row.fails, row.fails)),
            []);

    /// <summary>One repair a fault; sometimes a shared part that cures two.</summary>
    public IEnumerable<Repair> Repairs(ImmutableArray<Fault> faults, Func<ImmutableArray<AccessId>> access)
    {
        double verify = Whole(1, 8);
        foreach (Fault fault in faults) yield return Repair($"r-{fault.Id}", Whole(4, 60), verify, access(), fault.Id);
        if (faults.Length > 2 && Happens(0.4))
            yield return Repair("r-both", Whole(20, 70), verify, access(), faults[0].Id, faults[^1].Id);
    }

    public static Repair Repair(
        string id, double minutes, double verify, ImmutableArray<AccessId> access, params FaultId[] fixes) =>
        new(new RepairId(id), minutes, verify, access, Role.Anyone, [.. fixes]);

    /// <summary>States with ways of different lengths; a detour never pays.</summary>
    public AccessStates Access(int count, int longest, bool verified) => AccessFrom(
        [.. Enumerable.Range(1, count).Select(number => new AccessId($"a{number}"))],
        (_, _) => Whole(2, longest), verified);

    public static AccessStates AccessFrom(
        ImmutableArray<AccessId> ids, Func<int, int, double> minutes, bool verified) => new(
        ids.Select(id => new AccessState(id, Role.Anyone)),
        (from start in Enumerable.Range(0, ids.Length)
         from end in Enumerable.Range(0, ids.Length)
         where start != end
         select new AccessMove(ids[start], ids[end], minutes(start, end))).ToArray(),
        ids[0], verified ? ids[0] : null);

    public ImmutableArray<AccessId> Some(AccessStates access)
    {
        AccessId first = access.All[random.Next(access.All.Length)].Id, second =
            access.All[random.Next(access.All.Length)].Id;
        return first == second || Happens(0.5) ? [first] : [first, second];
    }

    private ImmutableArray<double> Row(int outcomes)
    {
        double error = Errors[random.Next(Errors.Length)];
        int usual = random.Next(outcomes);
        double first = outcomes == 2 ? error : Math.Round(error * random.NextDouble(), 2);
        double[] row = new double[outcomes];
        row[usual] = 1 - error;
        row[(usual + 1) % outcomes] += first;
        if (outcomes == 3) row[(usual + 2) % outcomes] += error - first;
        return [.. row];
    }
}
