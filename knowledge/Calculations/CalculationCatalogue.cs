using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>All named calculations.</summary>
public static class CalculationCatalogue
{
    /// <summary>Every calculation, by name in ordinal order.</summary>
    public static ImmutableSortedDictionary<string, Calculation> All { get; } = new[]
    {
        AirSideCalculations.All, CapacitorCalculations.All, ChargeCalculations.All, CoilCalculations.All,
        ConductorCalculations.All, CurveCalculations.All, DriveCalculations.All, EvidenceCalculations.All,
        FlammabilityCalculations.All, FlowCalculations.All, GlyphCalculations.All, InsulationCalculations.All,
        ModuleCalculations.All, MoistAirCalculations.All, NitrogenCalculations.All, PlatinumCalculations.All,
        PressureSwitchCalculations.All, RefrigerantCalculations.All, SignalCalculations.All, SplitCalculations.All,
        SupplyCalculations.All, ThermistorCalculations.All,
        UnbalanceCalculations.All, UncertaintyCalculations.All, VacuumCalculations.All, WindingCalculations.All,
    }.SelectMany(topic => topic).ToImmutableSortedDictionary(
        calculation => calculation.Name, calculation => calculation, StringComparer.Ordinal);

    /// <summary>Runs what a program asks for. Never throws for a user's values.</summary>
    public static CalculationResult Run(CalculationRequest request) => Find(request) is { } calculation
        ? calculation.Run(request.Inputs)
        : Given.Invalid($"there is no calculation {request.Id}; {NearestWord.HintOrList(request.Id, All.Keys).Help}");

    /// <summary>The calculation a request means; null when there is none.</summary>
    public static Calculation? Find(CalculationRequest request)
    {
        var name = request.Id;
        while (name.Length > 0)
        {
            if ((All.GetValueOrDefault(name) ?? EdgeCalculations.For(name, request.Inputs.Keys, All)) is { } found)
                return found;
            name = name[..Math.Max(0, name.LastIndexOf('-'))];
        }
        return null;
    }
}
