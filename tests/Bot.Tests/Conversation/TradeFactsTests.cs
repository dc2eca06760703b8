using DxAssistant.Graph.Model;
namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>The order in which a technician works. Each fact: common practice, no source.</summary>
public sealed class TradeFactsTests
{
    [Fact]
    public void FanCode_MotorFailed_DirtThenPlugThenWindingsThenMotor()
    {
        WalkRecord walk = Walk("brenholt-ws", "indoor-fan-fault", "indoor-fan-motor-failed");
        InOrder(walk, ["filter-look", "coil-look", "wheel-look", "wheel-turn"], ["fan-plug"], ["fan-windings"],
            ["replace-indoor-fan-motor"]);
        Assert.Equal("indoor-fan-motor-failed", walk.Proven);
    }

    [Fact]
    public void FanCode_BoardFailed_BoardOnlyAfterPlugAndWindings()
    {
        WalkRecord walk = Walk("brenholt-ws", "indoor-fan-fault", "indoor-board-failed");
        InOrder(walk, ["fan-plug"], ["fan-windings", "fan-speed-signal"], ["replace-indoor-board"]);
        Assert.Equal("indoor-board-failed", walk.Proven);
    }

    [Theory]
    [InlineData("comm-circuit-indoor-board")]
    [InlineData("comm-circuit-outdoor-board")]
    public void CommunicationCode_BoardFailed_TerminalsThenCableThenSide(string fault)
    {
        WalkRecord walk = Walk("brenholt-ws", "communication-code", fault);
        InOrder(walk, ["interconnect-terminals"], ["interconnect-continuity", "interconnect-insulation"],
            ["comm-idle-voltage", "comm-swing"]);
        Assert.Equal(fault, walk.Proven);
    }

    [Fact]
    public void RoomSensorCode_SensorFailed_PlugThenResistance()
    {
        WalkRecord walk = Walk("brenholt-ws", "room-sensor-code", "sensor-room-air");
        InOrder(walk, ["indoor-sensor-plugs"], ["room-sensor-resistance"], ["replace-room-sensor"]);
    }

    [Fact]
    public void CoilSensorCode_SensorFailed_PlugThenResistance()
    {
        WalkRecord walk = Walk("brenholt-ws", "coil-sensor-code", "sensor-indoor-coil");
        InOrder(walk, ["indoor-sensor-plugs"], ["coil-sensor-resistance"]);
    }

    [Fact]
    public void OverflowCode_FloatSwitchOpen_HoseThenFloatThenContinuity()
    {
        WalkRecord walk = Walk("brenholt-ws", "water-overflow-code", "float-switch-open");
        InOrder(walk, ["drain-hose-end"], ["float-free"], ["float-continuity"]);
        Assert.Equal("float-switch-open", walk.Proven);
    }

    [Theory]
    [InlineData("supply-under-voltage")]
    [InlineData("outdoor-board-failed")]
    public void VoltageCode_AnyCause_LegsBeforeAnyBoard(string fault)
    {
        WalkRecord walk = Walk("brenholt-ws", "supply-voltage-code", fault);
        InOrder(walk, ["supply-legs", "supply-line"], ["replace-outdoor-board", "replace-inverter-board"]);
    }

    [Fact]
    public void InverterCode_ModuleShorted_WindingsThenModule()
    {
        WalkRecord walk = Walk("brenholt-ws", "inverter-code", "power-module-shorted");
        InOrder(walk, ["compressor-windings"], ["module-diodes"], ["replace-inverter-board"]);
        Assert.Equal("power-module-shorted", walk.Proven);
    }

    // Gauges at a compressor that stands still prove nothing.
    [Theory]
    [InlineData("power-module-shorted")]
    [InlineData("compressor-grounded")]
    public void InverterCode_CompressorSilent_NoGauges(string fault)
    {
        WalkRecord walk = Walk("brenholt-ws", "inverter-code", fault);
        Assert.Contains("compressor-runs", walk.Steps);
        Assert.Empty(walk.Steps.Intersect(["high-side-pressure", "suction-pressure", "subcooling", "superheat"]));
        Assert.Equal(fault, walk.Proven);
    }

    [Theory]
    [InlineData("high-pressure-code", "high-pressure-switch-faulty", "high-side-pressure", "high-pressure-switch")]
    [InlineData("low-pressure-code", "low-pressure-switch-faulty", "suction-pressure", "low-pressure-switch")]
    public void PressureCode_SwitchFaulty_PressureThenSwitch(string symptom, string fault, string pressure,
        string contact)
    {
        WalkRecord walk = Walk("brenholt-ws", symptom, fault);
        // Where it stops in heating too, the port of the thick pipe shows the high side.
        InOrder(walk, [pressure, "standing-pressure", "high-side-pressure-heating"], [contact]);
        Assert.Equal(fault, walk.Proven);
    }

    [Fact]
    public void ModeConflict_OnMultiZone_AsksTheOtherZonesMode()
    {
        WalkRecord walk = Walk("tarn-duo", "mode-conflict-code", "mode-conflict");
        Assert.Equal("other-zones-mode", walk.Steps[0]);
        Assert.Equal("mode-conflict", walk.Proven);
    }

    [Fact]
    public void PoorHeating_DefrostFailing_IceMeltedBeforeTheGauges()
    {
        WalkRecord walk = Walk("veldarn-nord", "poor-heating", "defrost-failing");
        Assert.InRange(walk.FirstOf(["forced-defrost"]), 0, walk.FirstOf(["suction-pressure", "high-side-pressure"]));
    }

    [Fact]
    public void PhaseCode_PhaseMissing_VoltageBeforeTheRotatingField()
    {
        WalkRecord walk = Walk("ostvik-lc", "phase-code", "phase-loss");
        Assert.InRange(walk.FirstOf(["supply-phase-neutral"]), 0, walk.FirstOf(["phase-rotation"]));
        Assert.Equal("phase-loss", walk.Proven);
    }

    [Fact]
    public void HighPressureCode_WithoutLicence_FanAndCoilBeforeTheAirDifference()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "high-pressure-code");
        WalkRecord walk = HiddenFault.Typical("overcharge").Walk(walker);
        InOrder(walk, ["outdoor-fan-turns"], ["temperature-split"]);
        InOrder(walk, ["outdoor-coil-look"], ["temperature-split"]);
    }

    [Theory]
    [InlineData("communication-code", "comm-noise")]
    [InlineData("indoor-fan-not-turning", "indoor-fan-motor-failed")]
    [InlineData("compressor-start-code", "compressor-locked")]
    public void UnitThatCannotRun_IsNotMeasuredRunning(string symptom, string fault) =>
        Assert.DoesNotContain("temperature-split", Walk("brenholt-ws", symptom, fault).Steps);

    [Theory]
    [InlineData("loose-power-terminal")]
    [InlineData("dc-bus-fault")]
    [InlineData("surge-damage")]
    public void BurningSmell_AnyFault_IsSoughtWithThePowerOff(string fault)
    {
        WalkRecord walk = Walk("brenholt-ws", "burning-smell", fault);
        Assert.DoesNotContain(walk.Steps, step => IsUnderPower(step)
            || step is "trouble-returns" or "breaker-compressor-unplugged");
        Assert.Equal(fault, walk.Proven);
    }

    [Theory]
    [InlineData("undercharge-leak")]
    [InlineData("refrigerant-leak-alarm")]
    public void LeakAlarm_AnyFault_GasInTheAirFirstAndNothingRun(string fault)
    {
        WalkRecord walk = Walk("tarn-duo", "leak-alarm-code", fault);
        Assert.Equal("leak-concentration", walk.Steps[0]);
        Assert.DoesNotContain(walk.Steps, step => IsUnderPower(step) || step == "trouble-returns");
        Assert.Equal(fault, walk.Proven);
    }

    private static WalkRecord Walk(string series, string symptom, string fault) =>
        HiddenFault.Typical(fault).Walk(new Walker(ShippedContent.Assistant).Begin(series, "refrigerant", symptom));

    // Some step of each group is asked, and before any of the next.
    private static void InOrder(WalkRecord walk, params string[][] groups)
    {
        string asked = string.Join(" → ", walk.Steps);
        for (int group = 1; group < groups.Length; group++)
            Assert.True(walk.FirstOf(groups[group - 1]) < walk.FirstOf(groups[group]),
                $"{string.Join(" or ", groups[group - 1])} before {string.Join(" or ", groups[group])}: {asked}");
    }

    // Measured at a unit that runs or stands under power, covers off or gauges on.
    private static bool IsUnderPower(string step) =>
        ShippedContent.Library.Graph.Find(new CheckId(step)) is { } check
        && check.Access.All(state => state.Value == "open-running"
            || (state.Value == "gauges-on" && step != "standing-pressure"));
}
