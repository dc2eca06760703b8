using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>The words around readings that decide whether and how a number is one.</summary>
internal static class Words
{
    /// <summary>Words of a plain report that may surround a bare number without changing it.</summary>
    public static FrozenSet<string> Filler { get; } = Set(
        "a about all an and are approx approximately around as ac at be been by came comes currently dc display "
        + "exactly for from tester gauge gauges get gets getting got has have having "
        + "hi hello hey here i i'm i've im in into is it it's its just like look looks maybe measure measured "
        + "measurement measures measuring me meter my multimeter now of ok okay on or "
        + "probably read reading readings reads roughly say saying says see seeing seems showed showing shows so some "
        + "steady still sure that that's the then there there's they thing this "
        + "to um uh value was we we're were with yeah yep yes you sir thanks please again today well near nearly "
        + "almost circa ca give gives gave giving come coming up out right between "
        + "same they they're theyre both each draws drawing pulls pulling down hot cold warm volts ohms amps degrees "
        + "temp temperature pressure resistance voltage current capacitance winding windings sensor thermistor coil "
        + "pipe room line unit across terminal terminals probe phase leg");

    /// <summary>Words right before a bare number that say it was read.</summary>
    public static FrozenSet<string> Cue { get; } = Set(
        "reads reading read measures measured measuring shows showing showed getting get got gets gives gave giving "
        + "saying says say is it's see seeing was are draws drawing pulls pulling pulled "
        + "dropped fell");

    /// <summary>Words that may stand between such a word and its number.</summary>
    public static FrozenSet<string> Approximate { get; } = Set(
        "about approx approximately around roughly maybe like nearly almost circa ca exactly right at steady a just "
        + "only still now back me as up down to");

    /// <summary>Words behind which a bare number numbers something: a pin, a step, a code.</summary>
    public static FrozenSet<string> Numbered { get; } = Set(
        "code codes error err fault alarm step pin pins terminal zone board model serial sn part pn no number page "
        + "case job ticket order version ver rev phase stage connector cn plug jumper "
        + "switch dip sw relay fuse breaker circuit channel unit units floor apt suite item line address type class "
        + "level option ch wo po speed sensor gauge awg tester schedule grade article section figure table");

    /// <summary>Words by which a number says what should be, not what is; before it in its clause.</summary>
    public static FrozenSet<string> ExpectedBefore { get; } = Set(
        "should supposed spec specs specification rated rating nominal nominally setpoint set setting expected expect "
        + "expecting normally usually target instead rather not isn't wasn't ought "
        + "chart table manual book label nameplate typically typical limit max maximum min minimum if unless until "
        + "before need needs want wants what when why how would could "
        + "isnt wasnt don't dont doesn't doesnt didn't didnt replaced replacing replace install installed installing "
        + "ordered bought fuse breaker rla lra fla mca mop mocp yesterday previously tolerance within");

    /// <summary>Words by which a number says what should be; right after its unit.</summary>
    public static FrozenSet<string> ExpectedAfter { get; } = Set(
        "nominal rated rating setpoint spec specified breaker fuse fused thermistor sensor resistor capacitor cap "
        + "transformer outlet circuit supply unit system compressor condenser motor contactor relay disconnect "
        + "battery range scale setting ntc ptc heater class model control tolerance plug receptacle service minimum "
        + "maximum max min one ones rla lra fla pull pullup");

    /// <summary>Words behind a value, if no temperature, that make it a change.</summary>
    public static FrozenSet<string> Change { get; } = Set("drop rise increase decrease swing loss gain");

    /// <summary>Words before "of" that take a part of the value behind it.</summary>
    public static FrozenSet<string> Parts { get; } = Set("percent half third quarter most fraction multiple");

    /// <summary>Words before a value that make it a difference from another.</summary>
    public static FrozenSet<string> RelativeBefore { get; } = Set("by up down lost lose loses losing gained gain "
        + "dropped "
        + "drops rose fell heat heats cool cools cooled heated changed");

    /// <summary>Words behind a percentage that make it a figure of speech or a part of something.</summary>
    public static FrozenSet<string> PartOf { get; } = Set("sure certain positive of done sealed correct");

    /// <summary>Words behind a value that make it a difference from another.</summary>
    public static FrozenSet<string> Relative { get; } = Set("low high less more short off apart higher lower too "
        + "above below under over difference different "
        + "cooler warmer hotter colder ahead behind");

    /// <summary>Things that people count in a message about a unit.</summary>
    public static FrozenSet<string> Counted { get; } = Set(
        "board boards unit units head heads zone zones time times year years yr yrs month months week weeks day days "
        + "hour hours minute minutes second seconds wire wires screw screws bolt bolts "
        + "phase phases phased pole poles ton tons btu btus seer hp stage stages speed speeds people guys light "
        + "lights lamp lamps blink blinks flash flashes beep beeps floor floors room rooms story "
        + "stories call calls try tries attempt attempts reset resets cycle cycles code codes am pm o'clock st nd rd "
        + "th inch inches foot feet ft sensor sensors thermistor thermistors cap caps "
        + "capacitor capacitors pin pins terminal terminals valve valves motor motors compressor compressors filter "
        + "filters fuse fuses breaker breakers relay relays lines legs windings of people "
        + "different other others more bad good new old dead broken parts part techs things places spots ports port "
        + "circuits indoor outdoor level levels step steps pounds lbs oz ounces gallon "
        + "gallons square ga gauge awg row rows ways way digit digits number numbers percent customers years' wall "
        + "ceiling cassette ducted doors windows panels houses shops");

    /// <summary>Words behind which "one" is no number.</summary>
    public static FrozenSet<string> BeforeOne { get; } = Set(
        "on this that which the other each no any last first next every new old good bad only another some right left "
        + "same wrong");

    /// <summary>Those of them that can also stand before their number.</summary>
    public static FrozenSet<string> Rating { get; } = Set(
        "nominal rated rating setpoint spec specified minimum maximum max min rla lra fla");

    /// <summary>Words between two values that make them the ends of a range.</summary>
    public static FrozenSet<string> To { get; } = Set("to or through thru till");

    /// <summary>Words that begin a question to which the numbers in it are no answer.</summary>
    public static FrozenSet<string> Asking { get; } = Set(
        "is are was were should does do did could can would will what which why how isn't shouldn't doesn't");

    /// <summary>Words before a number that make it a limit.</summary>
    public static FrozenSet<string> Limit { get; } = Set("over above under below exceeding exceeds beyond past than "
        + "least most upto");

    /// <summary>Words that end the clause a number stands in.</summary>
    public static FrozenSet<string> ClauseEnd { get; } = Set("but then and while so because however although whereas");

    /// <summary>Words that may follow a bare number without being what it counts.</summary>
    public static FrozenSet<string> MayFollow { get; } = Set(
        "in on at across between and but with when while for from to now then here there it it's its is was the after "
        + "before over so i i'm or again still steady ish each all both same today too please "
        + "thanks ok okay yes also approx approximately about roughly ac dc this that inside outside indoors outdoors "
        + "ambient right exactly though if total we they even just off only up down sir "
        + "hot cold warm out superheat subcooling subcool split minus plus point as by of not no yeah which because "
        + "since");

    /// <summary>Words that mean a resistance is spoken of.</summary>
    public static FrozenSet<string> Resistive { get; } = Set(
        "sensor sensors thermistor thermistors winding windings resistance ohm ohms ntc coil megger insulation "
        + "continuity ohmed ohming kilohm kilohms");

    /// <summary>Words that mean a pressure is spoken of.</summary>
    public static FrozenSet<string> Pressing { get; } = Set(
        "suction head discharge pressure pressures liquid static gauge gauges manifold nitrogen psi psig side vacuum");

    /// <summary>Words that mean a display or a code on it is spoken of.</summary>
    public static FrozenSet<string> Display { get; } = Set("display displays displaying code codes error flashing "
        + "flashes blinking blinks led lcd screen");

    /// <summary>Words by which degrees are a difference, not a temperature.</summary>
    public static FrozenSet<string> Difference { get; } = Set(
        "superheat subcooling subcool supersheat delta split difference td drop rise");

    /// <summary>Words by which a K is kelvins, whatever was asked.</summary>
    public static FrozenSet<string> Superheat { get; } = Set("superheat supersheat subcooling subcool sh sc");

    public static FrozenSet<string> Months { get; } = Set(
        "january february march april may june july august september october november december jan feb mar apr jun "
        + "jul aug sep sept oct nov dec");

    private static FrozenSet<string> Set(string words) =>
        words.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);
}
