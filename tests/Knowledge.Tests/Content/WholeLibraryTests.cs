using System.Text.RegularExpressions;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>
/// What the shipped pages must hold between them. Counts and ids: what a ductless trade meets; common practice, no
/// source.
/// </summary>
public partial class WholeLibraryTests
{
    private const int LeastExamples = 8, LeastChecks = 120, LeastReadings = 60, LeastSeries = 4;

    private static readonly Library Shipped = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;

    // By families: supply, communication, indoor air, indoor electronics, sensors, water, zones, circuit, outdoor,
    // room, protections.
    private static readonly string[] Required = [.. """
        supply-under-voltage supply-over-voltage supply-unbalance phase-loss phase-sequence-reversed no-power loose-power-terminal
        supply-dead voltage-drop-undersized-wire
        comm-miswired comm-wire-open-or-short comm-noise comm-circuit-indoor-board comm-circuit-outdoor-board wired-controller-link
        indoor-fan-motor-failed indoor-fan-jammed indoor-fan-plug-loose filter-blocked indoor-coil-dirty blower-wheel-dirty
        louver-motor-failed louver-jammed louver-plug-loose
        indoor-board-failed display-link-loose accessory-module-misseated remote-control-faulty settings-mismatch memory-fault
        sensor-room-air sensor-indoor-coil sensor-outdoor-air sensor-outdoor-coil sensor-discharge sensor-module
        drain-blocked float-switch-stuck float-switch-open condensate-pump-failed unit-not-level
        mode-conflict zones-crossed address-duplicate
        undercharge-leak overcharge non-condensables restriction-kink service-valve-closed expansion-valve-stuck
        expansion-valve-coil-open reversing-valve-stuck reversing-valve-coil-open high-pressure-switch-faulty
        low-pressure-switch-faulty pressure-transducer-drift
        outdoor-fan-motor-failed outdoor-coil-blocked defrost-failing outdoor-board-failed power-module-shorted
        power-module-overheating reactor-pfc-fault dc-bus-fault compressor-winding compressor-grounded compressor-locked
        compressor-plug-loose discharge-overload-open
        airflow-low capacity-undersized line-insulation-missing thermostat-placement water-leak-indoor noise-vibration odour
        freeze-protection refrigerant-leak-alarm
        """.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)];

    public static TheoryData<string> Faults => [.. Shipped.Faults.Keys.Select(id => id.Value)];

    [Fact]
    public void Faults_OfTheTrade_AllHavePages() =>
        Assert.Empty(Required.Except(Shipped.Faults.Keys.Select(id => id.Value)));

    [Theory]
    [MemberData(nameof(Faults))]
    public void Fault_Any_TellsAllThatATechnicianNeeds(string id)
    {
        FaultPage page = Shipped.Faults[new FaultId(id)];
        Assert.NotEmpty(page.Summary.Text);
        Assert.NotEmpty(page.Seen);
        Assert.NotEmpty(page.Measured);
        Assert.NotEmpty(page.LooksTheSame);
        Assert.NotEmpty(page.Proof.Text);
        Assert.NotEmpty(page.Warranty.Text);
        Assert.Contains(page.Beware, line => WhenToStop().IsMatch(line.Text));
        Assert.Contains(Shipped.Graph.Repairs, repair => repair.Fixes.Contains(page.Id));
    }

    [Fact]
    public void Warranty_OfEveryPart_AsksForReadings() => Assert.Empty(Shipped.Faults.Values
        .Where(page => page.Part is not null && page.ClaimDemands.IsEmpty).Select(page => page.Id));

    [Fact]
    public void Said_OfSymptomsAndFaults_IsEightOrMoreDifferentExamples()
    {
        Assert.Empty(Shipped.Symptoms.Values.Where(page => TooFew(page.SaidAs.Select(said => said.Text)))
            .Select(page => page.Id.Value));
        Assert.Empty(Shipped.Faults.Values.Where(page => TooFew(page.SaidAs.Select(said => said.Text)))
            .Select(page => page.Id.Value));
    }

    [Fact]
    public void Checks_OfAllPages_AreManyAndHalfOfThemMeasure()
    {
        Assert.True(Shipped.Checks.Count >= LeastChecks, $"{Shipped.Checks.Count} checks");
        Assert.True(Shipped.Checks.Values.Count(page => page.Calculation is not null) >= LeastReadings);
        Assert.True(Shipped.Series.Count >= LeastSeries, $"{Shipped.Series.Count} series");
    }

    [Fact]
    public void Check_WithReadings_ShowsWhereTheProbesGo() => Assert.Empty(Shipped.Checks.Values
        .Where(page => page.Calculation is not null && page.Pictures.IsEmpty).Select(page => page.Id.Value));

    [Fact]
    public void Repair_Any_HasStepsVerificationAndCautions() => Assert.Empty(Shipped.Repairs.Values
        .Where(page => page.Steps.IsEmpty || page.Verify.Text.Length == 0 || page.Cautions.IsEmpty)
        .Select(page => page.Id.Value));

    [Fact]
    public void Cautions_WhereCoversAreOpenAndPowerIsOn_NameTheMains() => Assert.Empty(
        Shipped.Graph.Checks.Where(check => check.Access.Contains(new AccessId("open-running"))
            && !Warns(Shipped.Checks[check.Id].Cautions, "live-mains"))
            .Select(check => check.Id.Value)
        .Concat(Shipped.Graph.Repairs.Where(repair => repair.Access.Contains(new AccessId("open-running"))
            && !Warns(Shipped.Repairs[repair.Id].Cautions, "live-mains")).Select(repair => repair.Id.Value)));

    [Fact]
    public void Cautions_WhereALicenceIsNeeded_NameTheRefrigerant() => Assert.Empty(
        Shipped.Graph.Checks.Where(check => check.Who.Id == "refrigerant"
            && !OfRefrigerant(Shipped.Checks[check.Id].Cautions))
            .Select(check => check.Id.Value)
        .Concat(Shipped.Graph.Repairs.Where(repair => repair.Who.Id == "refrigerant"
            && !OfRefrigerant(Shipped.Repairs[repair.Id].Cautions))
            .Select(repair => repair.Id.Value)));

    [Theory]
    [InlineData("burning-smell")]
    [InlineData("leak-alarm-code")]
    public void Check_UnderPowerOrPressure_IsNotMadeAtASignOfDanger(string symptom) => Assert.Empty(Shipped.Graph.Checks
        .Where(check => check.Id.Value != "standing-pressure"
            && check.Access.All(state => state.Value is "open-running" or "gauges-on")
            && !Shipped.Checks[check.Id].NotAt.Contains(new SymptomId(symptom)))
        .Select(check => check.Id.Value));

    private static bool TooFew(IEnumerable<string> said) =>
        said.Distinct(StringComparer.OrdinalIgnoreCase).Count() < LeastExamples;

    private static bool OfRefrigerant(IEnumerable<CautionPage> cautions) =>
        cautions.Any(caution => caution.Id is "refrigerant-pressure" or "flammable-refrigerant" or "recovery"
            or "open-circuit");

    private static bool Warns(IEnumerable<CautionPage> cautions, string id) =>
        cautions.Any(caution => caution.Id == id);

    [GeneratedRegex("Stop|[Cc]all|Leave|licen", RegexOptions.CultureInvariant)]
    private static partial Regex WhenToStop();
}
