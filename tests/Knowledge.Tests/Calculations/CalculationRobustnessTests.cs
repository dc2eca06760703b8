using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Whatever a user types, a calculation answers with numbers or says why not.</summary>
public sealed class CalculationRobustnessTests
{
    private static readonly double[] Odd =
        [0, -0.0, 1, -1, 0.5, 1e-300, 1e-9, 1e9, 1e300, double.MaxValue, -1e300, -273.15, -300, 40, 100, double.NaN,
            double.PositiveInfinity, double.NegativeInfinity, double.Epsilon];

    public static TheoryData<string> Names() => [.. CalculationCatalogue.All.Keys];

    private static IEnumerable<CheckCase> CasesOf(string name) =>
        CheckCase.All.Values.Where(item => CalculationCatalogue.Find(item.Request)?.Name == name);

    [Theory]
    [MemberData(nameof(Names))]
    public void Run_OneOddNumber_NeverThrowsNorGivesNoNumber(string name)
    {
        foreach (var item in CasesOf(name))
            foreach (var (input, value) in item.AsInputs()
                .Where(pair => pair.Value is CalculationValue.Number or CalculationValue.Unknown))
                foreach (var odd in Odd)
                    AssertSound(name, item.AsInputs().SetItem(input, Changed(value, odd)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Run_AllOddNumbers_NeverThrowsNorGivesNoNumber(string name)
    {
        const int seed = 20_240_607;
        var random = new Random(seed);
        foreach (var item in CasesOf(name).Take(2))
            for (var i = 0; i < 300; i++)
            {
                var inputs = item.AsInputs().ToImmutableSortedDictionary(
                    pair => pair.Key, pair => Changed(pair.Value, Odd[random.Next(Odd.Length)]),
                        StringComparer.Ordinal);
                AssertSound($"{name}, seed {seed}", inputs, name);
            }
    }

    // What a calculation says it covers, it takes: the ends of each input, alone and with all others at an end.
    [Theory]
    [MemberData(nameof(Names))]
    public void Run_EndsOfWhatIsCovered_NeverThrowNorGiveNoNumber(string name)
    {
        var item = CasesOf(name).First();
        var ends = CalculationCatalogue.All[name].Inputs.Where(
            input => input is { Form: CalculationInputForm.Number, Unit: not null })
            .SelectMany(input => new[] { input.Covered.Least, input.Covered.Most }.Where(double.IsFinite)
                .Select(end =>
                    (input.Name, Value: (CalculationValue)new CalculationValue.Number(new Quantity(end, input.Unit!)))))
            .ToArray();
        foreach (var (input, value) in ends)
            AssertSound(name, item.AsInputs().SetItem(input, value));
        for (var first = 0; first < 2; first++)
            AssertSound(name, item.AsInputs().SetItems(ends.GroupBy(end => end.Name)
                .Select(pair => KeyValuePair.Create(pair.Key, (first == 0 ? pair.First() : pair.Last()).Value))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Run_InputMissing_IsInvalid(string name)
    {
        var calculation = CalculationCatalogue.All[name];
        var item = CasesOf(name).First();
        foreach (var input in calculation.Inputs.Where(input => input.Required))
            Assert.IsType<CalculationResult.InvalidInput>(calculation.Run(item.AsInputs().Remove(input.Name)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Run_UnitOfAnotherKind_IsInvalid(string name)
    {
        var calculation = CalculationCatalogue.All[name];
        var item = CasesOf(name).First();
        foreach (var input in calculation.Inputs.Where(
            input => input is { Form: CalculationInputForm.Number, Unit: not null }
                && item.Inputs.ContainsKey(input.Name)))
            Assert.IsType<CalculationResult.InvalidInput>(calculation.Run(
                item.AsInputs().SetItem(input.Name, new CalculationValue.Unknown(1, "furlong"))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Run_SameInputsInOtherUnits_GiveTheSameResult(string name)
    {
        var calculation = CalculationCatalogue.All[name];
        foreach (var item in CasesOf(name).Where(item => !item.Expected.ContainsKey("status")))
            foreach (var input in calculation.Inputs.Where(
                input => input is { Form: CalculationInputForm.Number, Unit: not null }
                    && item.Inputs.ContainsKey(input.Name)))
            {
                var quantity = Read(item.AsInputs()[input.Name], input.Unit!.Kind);
                foreach (var unit in Unit.All.Where(unit => unit.Kind == input.Unit.Kind))
                    AssertSame(calculation, item, item.AsInputs()
                        .SetItem(input.Name, new CalculationValue.Number(quantity.In(unit))), unit);
            }
    }

    [Fact]
    public void All_EveryCalculation_HasAPublishedCase() =>
        Assert.All(CalculationCatalogue.All.Keys, name => Assert.NotEmpty(CasesOf(name)));

    private static Quantity Read(CalculationValue value, QuantityKind kind)
    {
        var (number, code) = value is CalculationValue.Number known ? (known.Quantity.Value, known.Quantity.Unit.Code)
            : (0, "");
        Assert.True(Unit.TryParse(code, kind, out var unit));
        return new Quantity(number, unit);
    }

    private static void AssertSame(Calculation calculation, CheckCase item, ImmutableSortedDictionary<string,
        CalculationValue> changed, Unit unit)
    {
        var before = Assert.IsType<CalculationResult.Answer>(calculation.Run(item.AsInputs())).Values;
        var result = calculation.Run(changed);
        Assert.True(result is CalculationResult.Answer, $"{item.Id} in {unit.Code}: {result}");
        foreach (var (first, second) in before.Zip(((CalculationResult.Answer)result).Values))
            if (first.Value is CalculationValue.Number one && second.Value is CalculationValue.Number two)
                Assert.True(Math.Abs(one.Quantity.Si - two.Quantity.Si) <= 1e-6 * Math.Abs(one.Quantity.Si) + 1e-9,
                    $"{item.Id} in {unit.Code}: {one}, {two}");
            else
                Assert.Equal(first.Value.ToString(), second.Value.ToString());
    }

    private static CalculationValue Changed(CalculationValue value, double number) => value switch
    {
        CalculationValue.Number known => new CalculationValue.Number(known.Quantity with { Value = number }),
        CalculationValue.Unknown unknown => unknown with { Value = number },
        CalculationValue.Numbers list => list with { Values = list.Values.SetItem(0, number) },
        _ => value,
    };

    private static void AssertSound(string shown, ImmutableSortedDictionary<string, CalculationValue> inputs,
        string? name = null)
    {
        var result = CalculationCatalogue.All[name ?? shown].Run(inputs);
        var said = shown + ": " + string.Join("; ", inputs.Select(pair => $"{pair.Key}={pair.Value}"));
        if (result is CalculationResult.Answer answer)
            foreach (var term in answer.Values)
                Assert.True(Finite(term.Value), $"{said} gave {term}");
    }

    private static bool Finite(CalculationValue value) => value switch
    {
        CalculationValue.Number number => double.IsFinite(number.Quantity.Value) && double.IsFinite(number.Quantity.Si),
        CalculationValue.Numbers list => list.Values.All(double.IsFinite),
        _ => true,
    };
}
