using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>A refused input is named, with what it may be.</summary>
public sealed class RefusalTextTests
{
    // Source: definition: the bounds that the calculation declares, in its own unit. Resistance above nought,
    // temperature above absolute zero, a share between nought and a hundred per cent; IEC 60751 covers -200 to 850 °C.
    [Theory]
    [InlineData("ntc-beta-r-01", "R25=0", "R25 must be above 0 Ω")]
    [InlineData("cap-load-01", "I=-1", "I must be at least 0 A")]
    [InlineData("pt1000-r-01", "T=-300", "T must be above -273.15 °C")]
    [InlineData("pt1000-r-01", "T=-500 degF", "T must be above -273.15 °C")]
    [InlineData("psy-rh-01", "RH=-1", "RH must be 0 to 100 %")]
    [InlineData("pt1000-r-01", "T=851", "T is covered for -200 to 850 °C")]
    [InlineData("pt1000-r-01", "T=1600 degF", "T is covered for -200 to 850 °C")]
    [InlineData("bayes-01", "prior=1.1", "prior must be 0 to 1")]
    [InlineData("combine-u-01", "u1=-1", "u1 must be at least 0")]
    [InlineData("combine-u-01", "u1=2e12", "u1 is covered for -")]
    [InlineData("normalize-posterior-01", "likelihood=[0.5, 1.5, 0.5]", "likelihood must be 0 to 1")]
    [InlineData("normalize-posterior-01", "likelihood=[0.5, NaN, 0.5]", "likelihood holds what is not a number")]
    [InlineData("ntc-beta-r-01", "R25=NaN", "R25 is not a number")]
    public void Run_NumberOutOfBounds_NamesInputAndBounds(string id, string changes, string text) =>
        Assert.Contains(text, ChangedCase.Run(id, changes).ToString(), StringComparison.Ordinal);

    // Source: definition: the kind of input that each calculation declares.
    [Theory]
    [InlineData("ntc-beta-r-01", "R25=1 V", "R25 must be a number in Ω, not in V; accepted: ")]
    [InlineData("ntc-beta-r-01", "R25=1 1", "R25 must be a number in Ω, not in a plain number; accepted: ")]
    [InlineData("ntc-beta-r-01", "R25=many", "R25 must be a number in Ω")]
    [InlineData("bayes-01", "prior=1 V", "prior must be a number in plain form, not in V; accepted: 1")]
    [InlineData("bayes-01", "prior=many", "prior must be a number in plain form")]
    [InlineData("combine-u-01", "u1=many", "u1 must be a number")]
    [InlineData("wind-ll-01", "connection=ring", "connection must be star or delta")]
    [InlineData("wind-ll-01", "connection=", "connection is missing")]
    [InlineData("ntc-beta-r-01", "R25=", "R25 is missing")]
    [InlineData("jcgm-pc1-01", "y=", "y is missing")]
    [InlineData("pc-order-01", "faults=", "faults is missing")]
    [InlineData("pc-order-01", "p=", "p is missing")]
    [InlineData("pc-order-01", "faults=[]", "faults must be a list of words")]
    [InlineData("pc-order-01", "p=[]", "p must be a list of numbers in plain form")]
    [InlineData("pc-order-01", "cost=[]", "cost must be a list of numbers in min")]
    public void Run_WrongForm_NamesInputAndWhatItMustBe(string id, string changes, string text) =>
        Assert.Contains(text, Assert.IsType<CalculationResult.InvalidInput>(ChangedCase.Run(id, changes)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Run_WrongUnit_ListsUnitsOfTheKindAndNoOther()
    {
        string said =
            Assert.IsType<CalculationResult.InvalidInput>(ChangedCase.Run("ntc-beta-r-01", "R25=1 V")).Message;
        string[] accepted = said[(said.IndexOf("accepted: ", StringComparison.Ordinal) + 10)..].Split(", ");
        Assert.Contains("ohm (Ω)", accepted);
        Assert.Contains("kohm (kΩ)", accepted);
        Assert.DoesNotContain("V", accepted);
        Assert.Equal(accepted.Distinct(StringComparer.Ordinal), accepted);
    }

    [Fact]
    public void Run_UnitThatIsWrittenAsItsSign_IsListedOnce()
    {
        string said = Assert.IsType<CalculationResult.InvalidInput>(ChangedCase.Run("cap-load-01", "I=1 V")).Message;
        Assert.Matches("accepted: (.*, )?A(,|$)", said);
    }

    [Theory]
    [InlineData("wind-ll-01", "connection=DELTA", "delta")]
    [InlineData("wind-ll-01", "connection= delta ", "delta")]
    public void Run_WordInOtherLetters_IsTheChoice(string id, string changes, string choice)
    {
        var answer = Assert.IsType<CalculationResult.Answer>(ChangedCase.Run(id, changes));
        Assert.Equal(choice, answer.Derivation.PutIn.Single(term => term.Symbol == "connection").Value.ToString());
        Assert.Equal(1.25 * 2 / 3, ((CalculationValue.Number)answer.Values.Single().Value).Quantity.Value, 1e-9);
    }

    // Source: definition of the record: place after the document, and where a value comes from memory it says so.
    [Fact]
    public void Citation_Text_HasPlaceAndMemory()
    {
        Assert.Equal("Sheet", new Citation("Sheet").ToString());
        Assert.Equal("Sheet, page 2", new Citation("Sheet", "page 2").ToString());
        Assert.Equal("Sheet, page 2 (from memory)", new Citation("Sheet", "page 2").FromMemory().ToString());
        Assert.Equal("Sheet (from memory)", new Citation("Sheet").FromMemory().ToString());
    }
}
