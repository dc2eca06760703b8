using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Content;

public class LibraryTests
{
    private static readonly Library Tiny = ContentCompiler.Compile(TinyContent.Folder).Library!;

    [Fact]
    public void Compile_TinyFolder_GraphHasNoFindings() => Assert.Empty(Tiny.Graph.Findings);

    [Fact]
    public void Compile_FaultPage_KeepsWordsAndTheirPlace()
    {
        FaultPage fault = Tiny.Faults[new FaultId("fan-plug-loose")];
        Assert.Equal(new Passage("Fan plug loose", new PagePlace("faults/fan-plug-loose.md", "Fan plug loose")),
            fault.Title);
        Assert.Equal(new Passage("It is seen.", new PagePlace("faults/fan-plug-loose.md", "Seen")),
            Assert.Single(fault.Seen));
        LooksTheSame alike = Assert.Single(fault.LooksTheSame);
        Assert.Equal(new FaultId("fan-motor-failed"), alike.Fault);
        Assert.Equal("Fan motor failed: the plug is home", alike.Text.Text);
        Assert.Null(fault.Part);
        Assert.Empty(fault.Series);
    }

    [Fact]
    public void Compile_CheckPage_HasStepsOutcomesAndCautions()
    {
        CheckPage check = Tiny.Checks[new CheckId("fan-plug")];
        Assert.Equal(["Find the plug, upper right on the board.", "Press it home."],
            check.How.Select(step => step.Text));
        Assert.Equal(["home", "loose"], check.Outcomes.Select(outcome => outcome.Id.Value));
        Assert.Equal("Mains voltage can kill.", Assert.Single(check.Cautions).Danger.Text);
        Assert.Equal("common-practice", Assert.Single(check.Sources).Id);
    }

    [Fact]
    public void Compile_Likelihoods_BlankCellsShareTheRestAndRowsSumToOne()
    {
        Check check = Tiny.Graph.Find(new CheckId("room-sensor"))!;
        double[] row = [.. check.Row(new FaultId("room-sensor-failed"))];
        Assert.Equal([0.1, 0.3, 0.3, 0.3], row.Select(value => Math.Round(value, 12)));
        Assert.All(Tiny.Graph.Checks.SelectMany(known => known.Likelihoods.Values.Append(known.EveryOtherFault)),
            values => Assert.Equal(1, values.Sum(), 12));
    }

    [Fact]
    public void Compile_LikelihoodColumnsInAnotherOrder_FollowTheOutcomes()
    {
        string text = TinyContent.Texts["checks/fan-plug.md"]
            .Replace("| Fault | home | loose |", "| Fault | loose | home |")
                .Replace("| never | always |", "| always | never |")
            .Replace("| 0.97 | 0.03 |", "| 0.03 | 0.97 |")
                .Replace("other fault | always | never |", "other fault | never | always |");
        Check turned = ContentCompiler.Compile(TinyContent.With("checks/fan-plug.md", text)).Library!.Graph.Find(
            new CheckId("fan-plug"))!;
        Check straight = Tiny.Graph.Find(new CheckId("fan-plug"))!;
        Assert.Equal(straight.Outcomes.AsEnumerable(), turned.Outcomes);
        Assert.Equal(straight.Row(new FaultId("fan-motor-failed")).AsEnumerable(),
            turned.Row(new FaultId("fan-motor-failed")));
    }

    [Fact]
    public void Compile_Series_HasRatingsCurvesAndCodes()
    {
        SeriesPage series = Tiny.Series["alder-one"];
        Assert.Equal(Market.CelsiusKilopascal, series.Market);
        Assert.Equal(("230 V", "service-sheet"),
            (series.Ratings["supply"].Value.Text, series.Ratings["supply"].Source.Id));
        Assert.Equal("room-10k", series.Ratings["room-air-sensor"].Curve);
        Assert.Equal(new DisplayCode("F1", "steady", new SymptomId("fan-not-turning"),
            new Passage("Fan speed not seen", new PagePlace("series/alder-one.md", "Codes"))), series.Codes[0]);
    }

    [Fact]
    public void Compile_AccessStates_HaveStepsLimitsAndMinutes()
    {
        AccessPage isolated = Tiny.Access[new AccessId("isolated-open")];
        Assert.Null(isolated.Steps[0].Limit);
        Assert.Equal((5, "at most 5 V"), (isolated.Steps[1].Limit!.AtMost, isolated.Steps[1].Limit!.Text.Text));
        Assert.Equal(8, Tiny.Graph.Access.Minutes(new AccessId("closed-running"), new AccessId("isolated-open")));
        Assert.Equal(new AccessId("closed-running"), Tiny.Graph.Access.Start);
    }

    [Fact]
    public void Compile_RepairPage_CuresTheFaultsThatLinkToIt() =>
        Assert.Equal([new FaultId("fan-plug-loose")], Tiny.Graph.Find(new RepairId("seat-plug"))!.Fixes.AsEnumerable());

    [Fact]
    public void Compile_Glossary_SplitsItsCells()
    {
        Assert.Equal(["head", "cassette"], Tiny.Glossary[0].AlsoSaidAs.AsEnumerable());
        Assert.Empty(Tiny.Glossary[1].AlsoSaidAs);
    }

    [Fact]
    public void Missing_UnknownPhrase_IsNamed()
    {
        Assert.Equal("Hello {name}, tell me what is wrong.", Tiny.Phrases.Template("greeting"));
        Assert.Equal(["farewell"], Tiny.Phrases.Missing(["greeting", "farewell"]).AsEnumerable());
    }

    [Fact]
    public void Version_ChangesWithAnyTextAndNotWithLineEnds()
    {
        Assert.Matches("^[0-9a-f]{16}$", Tiny.Version);
        ContentFolder windows = ContentFolder.Of(
            TinyContent.Folder.Files.Select(file => file with { Text = file.Text.Replace("\n", "\r\n") }));
        Assert.Equal(Tiny.Version, ContentCompiler.Compile(windows).Library!.Version);
        ContentFolder other = TinyContent.With("words.md", TinyContent.Texts["words.md"] + "\n");
        Assert.NotEqual(Tiny.Version, ContentCompiler.Compile(other).Library!.Version);
    }
}
