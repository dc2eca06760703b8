using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class ClauseReaderTests
{
    private static readonly TradeAnalyzer Analyzer = new(new Thesaurus([]));

    [Theory]
    [InlineData("drain is clear but fan is dead", "fan dead")]
    [InlineData("no leaks", "")]
    [InlineData("fan is not jammed", "")]
    [InlineData("not the filter", "")]
    [InlineData("already cleaned the filter, coil is dirty", "coil dirti")]
    [InlineData("plug is tight and board is dead", "board dead")]
    [InlineData("not cooling", "not~cool cool")]
    [InlineData("drain is not clear", "drain not~clear clear")]
    [InlineData("filter needs to be cleaned", "filter clean")]
    [InlineData("new install", "new instal")]
    [InlineData("drops when it runs", "drop run")]
    [InlineData("no pump on this job, drain is blocked", "drain block")]
    [InlineData("no pump fitted", "")]
    [InlineData("no pump pressure", "not~pump pump pressur")]
    [InlineData("remote works on other heads, board is dead", "board dead")]
    [InlineData("gravity job with no pump, drain is blocked", "graviti job drain block")]
    [InlineData("compressor is not the culprit, module is", "modul")]
    [InlineData("swapped the board, cable is broken", "cabl broken")]
    [InlineData("wires are swapped", "wire swap")]
    [InlineData("not the filter it is the coil", "coil")]
    [InlineData("fan works on low", "fan work low")]
    public void Read_Message_KeepsOnlyTheComplaint(string text, string complaint)
    {
        var reading = ClauseReader.Read(Analyzer.Analyze(WordSplitter.Split(text)));
        Assert.Equal(complaint, string.Join(' ', reading.Complaint.Where(token => token.Role != TokenRole.Filler)
            .Select(token => token.Term)));
    }
}
