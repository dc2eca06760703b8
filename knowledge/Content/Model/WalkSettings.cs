using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>What the pages set for the course of a conversation; what they leave out is as usual.</summary>
/// <param name="Values">By the name of the setting.</param>
/// <param name="Limits">What each rule laid over the plan may cost, by its name.</param>
public sealed record WalkSettings(
    ImmutableSortedDictionary<string, double> Values, ImmutableSortedDictionary<string, RuleLimit> Limits)
{
    /// <summary>As if no page set anything.</summary>
    public static WalkSettings Usual { get; } = new(
        ImmutableSortedDictionary.Create<string, double>(StringComparer.Ordinal),
        ImmutableSortedDictionary.Create<string, RuleLimit>(StringComparer.Ordinal));

    /// <summary>The probability from which a fault counts as found rather than likely.</summary>
    public double Found => Of(SettingShapes.Found);

    /// <summary>The probability from which a second fault with the same repair is named.</summary>
    public double NamedBeside => Of(SettingShapes.NamedBeside);

    /// <summary>The probability from which a fault is named among those still in question at the end.</summary>
    public double Suspected => Of(SettingShapes.Suspected);

    /// <summary>How many of them are named.</summary>
    public int Suspects => (int)Of(SettingShapes.Suspects);

    /// <summary>
    /// The probability of all that only somebody else can mend from which they are booked rather than the unit watched.
    /// </summary>
    public double Booked => Of(SettingShapes.Booked);

    /// <summary>How many checks are named that whoever comes next begins with.</summary>
    public int BeginWith => (int)Of(SettingShapes.BeginWith);

    /// <summary>The probability of "none of these" from which it leads.</summary>
    public double NoneLeads => Of(SettingShapes.NoneLeads);

    /// <summary>
    /// The probability of what a repair without parts cures from which it is made before a case is left to others.
    /// </summary>
    public double TriedFirst => Of(SettingShapes.TriedFirst);

    /// <summary>The probability from which a fault is in earnest question.</summary>
    public double InEarnest => Of(SettingShapes.InEarnest);

    /// <summary>The probability from which an answer is all but known.</summary>
    public double Foregone => Of(SettingShapes.Foregone);

    /// <summary>When results contradict each other.</summary>
    public ContradictionFloor Contradiction => new(Of(SettingShapes.Contradiction), Of(SettingShapes.Chance));

    /// <summary>
    /// How many times better the rest must fit without one result than without the next for it to be named.
    /// </summary>
    public double OddOne => Of(SettingShapes.OddOne);

    /// <summary>After each so many checks left out, stopping is offered.</summary>
    public int LeftOut => (int)Of(SettingShapes.LeftOut);

    /// <summary>The least doubt that a question to an owner must take away, bits.</summary>
    public double WorthAQuestion => Of(SettingShapes.WorthAQuestion);

    /// <summary>The least doubt that it must take away a minute, bits.</summary>
    public double WorthAMinute => Of(SettingShapes.WorthAMinute);

    /// <summary>How often what is told with doubt is right.</summary>
    public double DoubtTrusted => Of(SettingShapes.DoubtTrusted);

    /// <summary>
    /// The part of a reading's evidence that stays with every outcome: a lead on the wrong terminal, a figure misread.
    /// </summary>
    public double Misread => Of(SettingShapes.Misread);

    /// <summary>How likely work of a kind that may not hold was the right one although it did not cure.</summary>
    public double NotHeld => Of(SettingShapes.NotHeld);

    /// <summary>
    /// How many times better an answer must fit a fault than a unit without it for the check to show the fault.
    /// </summary>
    public double Shows => Of(SettingShapes.Shows);

    /// <summary>
    /// How many times better than a unit without it a result must fit a fault to be offered as one seen beside another.
    /// </summary>
    public double Beside => Of(SettingShapes.Beside);

    /// <summary>The most that a rule may cost.</summary>
    public RuleLimit LimitOf(LaidRule rule) =>
        Limits.GetValueOrDefault(RuleShapes.NameOf(rule)) ?? RuleShapes.UsualOf(rule);

    private double Of(SettingShape shape) => Values.GetValueOrDefault(shape.Name, shape.Usual);
}
