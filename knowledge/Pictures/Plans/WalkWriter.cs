using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Puts the titles, questions and answers of the pages to the steps of a tree.</summary>
/// <param name="isFull">With the question of each check and what a repair is for.</param>
internal sealed class WalkWriter(Library library, IPictureWords words, bool isFull)
{
    public WalkStep Write(WalkNode node)
    {
        bool isRepair = node.Step is PlannedStep.DoRepair;
        (Passage? title, string? note) = node.Step switch
        {
            PlannedStep.DoCheck step =>
                (library.Checks[step.Check].Title, isFull ? library.Checks[step.Check].Ask.Text : null),
            PlannedStep.DoRepair step when library.Repairs.TryGetValue(step.Repair, out RepairPage? page) =>
                (page.Title, Sure(node)),
            _ => ((Passage?)null, (string?)null),
        };
        return new WalkStep
        {
            Title = title?.Text
                ?? words.Say("picture-walk-leave"), Page = title?.Place.Path, Note = note, IsRepair = isRepair,
            State = AccessOf(node) is { } access && access != node.From ? library.Access[access].Title.Text : null,
            Rows = Rows(node),
        };
    }

    /// <summary>The state in which a step is done.</summary>
    public static AccessId? AccessOf(WalkNode node) => node.Step switch
    {
        PlannedStep.DoCheck check => check.Access,
        PlannedStep.DoRepair repair => repair.Access,
        _ => null,
    };

    /// <summary>A share in whole percent.</summary>
    public string Percent(double share) => Shares.Percent(words, share);

    private string Sure(WalkNode node) =>
        words.Say("picture-walk-sure", ("fault", library.Faults[node.Likeliest].Title.Text),
            ("share", Percent(node.Belief)));

    private ImmutableArray<WalkRow> Rows(WalkNode node)
    {
        WalkBranch[][] together =
            [.. node.Branches.Where(branch => branch.Next.Step is not null || node.Step is PlannedStep.DoCheck)
                .GroupBy(branch => Fate(branch.Next)).Select(group => group.ToArray())];
        WalkBranch[]? heaviest = together.Where(group => group[0].Next.Step is not null)
            .MaxBy(group => (group[0].Next.Steps, Math.Round(group.Sum(branch => branch.Next.Share), 9)));
        return [.. together.Select(group => Row(node, group) with { IsDown = group == heaviest })];
    }

    // Answers with the same fate stand together: the same repair and nothing after it, or the same suspect.
    private static string Fate(WalkNode next) => next.Step switch
    {
        null => $"suspect {next.Likeliest}",
        PlannedStep.DoRepair step when next.Steps == 1 =>
            $"repair {step.Repair} {step.Access} {next.From} {next.Likeliest}",
        _ => $"step {next.Order}",
    };

    private WalkRow Row(WalkNode node, WalkBranch[] group)
    {
        double share = group.Sum(branch => branch.Next.Share);
        WalkNode next = group[0].Next
            with { Share = share, Belief = group.Sum(branch => branch.Next.Belief * branch.Next.Share) / share };
        string answer = string.Join(" / ", group.Select(branch => Answer(node, branch)));
        string suspect = next.Step is not null ? "" : words.Say(
            "picture-walk-suspect", ("fault", library.Faults[next.Likeliest].Title.Text),
            ("share", Percent(next.Belief)));
        return new WalkRow(answer, group.Sum(branch => branch.Probability), next.Step is null ? null : Write(next),
            suspect);
    }

    private string Answer(WalkNode node, WalkBranch branch) => node.Step is PlannedStep.DoCheck step
        ? library.Checks[step.Check].Outcomes.First(outcome => outcome.Id == branch.Outcome).Answer.Text
        : words.Say("picture-walk-not-cured");
}
