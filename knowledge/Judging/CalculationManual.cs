using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Judging;

/// <summary>The page of the manual that lists all calculations and judges with their sources.</summary>
public static class CalculationManual
{
    /// <summary>The page as Markdown; the same bytes on every system, lines end in a line feed.</summary>
    public static string Text() => $"""
        # Calculations

        Made from the code; do not edit. `DX_UPDATE=1 dotnet test tests/Knowledge.Tests --filter CalculationManual` writes it anew.

        ## Calculations by name
        The command `calc` runs each of them: inputs in any unit of their kind, values outside of what the formula covers
        refused as `out-of-range`, impossible ones as `invalid-input`. "From memory" marks what was not seen in its source.

        {CalculationTable.Text()}
        ## Judges of readings
        A check page names one of them. Each combines what the meter's maker promises, the tolerance of the sensor and the
        uncertainty of the temperature or altitude to a standard uncertainty (JCGM 100:2008), and gives the probability of
        each verdict (JCGM 106:2012), the errors together taken as normal; where a single limit of error rules, that asks
        a twentieth of the limit more before a verdict stands at 0.95. Decision rule: {DecisionRule.Text}; less is "too close to call".

        {JudgeTable.Text()}
        """.ReplaceLineEndings("\n");
}
