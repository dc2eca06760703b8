using DxAssistant.Knowledge.Glyphs;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Glyphs;

public sealed class GlyphReaderTests
{
    [Theory]
    [InlineData("both lamps stay on", false)]
    [InlineData("both lights solid", false)]
    [InlineData("the green and the red lamp are both on all the time", false)]
    [InlineData("both lamps flash together", true)]
    [InlineData("red and green blinking at the same time", true)]
    public void Read_TwoLampsWithoutACount_IsHowBothAre(string said, bool flashing)
    {
        GlyphReading reading = GlyphReader.Read(said);
        Assert.Equal(("", flashing), (reading.Canonical, reading.Flashing));
    }

    [Theory]
    [InlineData("both lamps are off")]
    [InlineData("both lights are on but no air comes out")]
    [InlineData("the lamp is on")]
    public void TryRead_LampsAmongOtherThings_IsNoCode(string said) => Assert.False(GlyphReader.TryRead(said, out _));

    // As technicians type and say them; the code, then how it blinks.
    public static TheoryData<string, string> Codes => Rows(
        """
        E5 => E5
        e5 => E5
        e five => E5
        E-5 => E5
        E 5 => E5
        ES => E5
        es => E5
        P oh => P0
        p zero => P0
        PO => P0
        P0 => P0
        dash dash => --
        -- => --
        - - => --
        eighty-eight flashing => 88 flashing
        88 flashing => 88 flashing
        all segments lit => 88
        all the segments are lit up => 88
        everything lit up => 88
        blinks five times then pauses => blinks 5
        5 blinks => blinks 5
        green 3 red 1 => lamps green 3,red 1
        3 green 1 red => lamps green 3,red 1
        green three times red once => lamps green 3,red 1
        code H6 => H6
        it says capital h little b => HB
        h six => H6
        h number six => H6
        echo five => E5
        foxtrot one => F1
        double e => EE
        double e 5 => EE5
        unit is showing e five and beeping => E5
        unit is showing E5 and beeping => E5
        showing b4 => B4
        b4 => B4
        B 4 => B4
        b four => B4
        bee four => B4
        bravo four => B4
        d5 => D5
        d five => D5
        delta five => D5
        dee five => D5
        L0 => L0
        L zero => L0
        L oh => L0
        LO => L0
        el zero => L0
        lima zero => L0
        L1 => L1
        l1 => L1
        H0 => H0
        HO => H0
        aitch oh => H0
        hotel zero => H0
        C0 => C0
        CO => C0
        see zero => C0
        cee oh => C0
        charlie zero => C0
        P6 => P6
        papa six => P6
        P8 => P8
        pee eight => P8
        5U => 5U
        five u => 5U
        SU => SU
        U0 => U0
        you oh => U0
        uniform zero => U0
        bA => BA
        b a => BA
        BA => BA
        C 0 on the display => C0
        error code e5 => E5
        error 21 => 21
        fault code 12 => 12
        the display reads E 5 => E5
        flashing E5 => E5 flashing
        E5 flashing => E5 flashing
        E5 steady => E5 steady
        E5 solid not flashing => E5 steady
        it is flashing h6 on both => H6 flashing
        code E-05 => E05
        E05 => E05
        e zero five => E05
        e oh five => E05
        E101 => E101
        CH 05 => CH05
        c h zero five => CH05
        dF => DF
        it shows dF => DF
        showing FC => FC
        it blinks red 5 times => blinks 5 lamps red 5
        the led flashes 3 times => blinks 3
        red light blinking twice => blinks 2 lamps red 2
        two long three short => lamps long 2,short 3
        power light blinks 3 times timer light 5 => lamps power 3,timer 5
        flashes 6 times, pause, repeats => blinks 6
        6 flashes => blinks 6
        operation light flashing 4 times => blinks 4 lamps operation 4
        E5 flashing 3 times => E5 flashing blinks 3
        "E5" => E5
        code is 'H6' => H6
        it's throwing an e 5 => E5
        we got E5 again => E5
        E5 came up => E5
        says E5 then goes to H6 => E5
        says F1 or maybe E1 => F1
        fox five => F5
        echo 5 => E5
        Echo-Five => E5
        E.5 => E5
        E_5 => E5
        triple eight => 888
        three dashes => ---
        --- => ---
        two dashes => --
        display shows two dashes => --
        P1 and the fan stops => P1
        see code 5 => 5
        code five => 5
        error five => 5
        code number 5 => 5
        E6 => E6
        6E => 6E
        capital E number 5 => E5
        upper case e 5 => E5
        lowercase b six => B6
        small b six => B6
        little d five => D5
        dee oh => D0
        E fife => E5
        code niner => 9
        alpha two => A2
        A 2 => A2
        F as in foxtrot 1 => F1
        J3 => J3
        E12 => E12
        e twelve => E12
        e one two => E12
        E thirteen => E13
        C 12 => C12
        it's H6. => H6
        (E5) => E5
        e5, h6 => E5
        ES on the screen => E5
        shows es => E5
        E5 at 3 pm => E5
        E 5 2 times => E5
        zone 2 shows E5 => E5
        head 3 shows b4 flashing => B4 flashing
        the u zero code => U0
        l5 => L5
        O5 => O5
        05 => 05
        S0 => S0
        Eb => EB
        EB => EB
        E8 => E8
        E9 => E9
        Eg => E9
        Eq => E9
        E2 => E2
        EZ => E2
        8E => 8E
        Bb => BB
        E5. => E5
        error: e5 => E5
        error:E5 => E5
        E5: => E5
        err e5 => E5
        E 0 5 => E05
        E  5 => E5
        E five flashing => E5 flashing
        EE => EE
        E3 E3 E3 => E3
        code 3 blinks => blinks 3
        fault 7 => 7
        error 4 4 => 44
        E4 4 => E4
        tango one => T1
        yankee two => Y2
        E as in echo five => E5
        the display is showing a six => A6
        i think it's a F1 => F1
        it's an F1 => F1
        unit's flashing d f => DF flashing
        the unit shows c zero on the wall unit => C0
        reading L0 on the head => L0
        low pressure code L O => L0
        lo code => L0
        shows Lo => L0
        shows LO => L0
        code lo => L0
        capital L number one => L1
        big H little o => H0
        s u => SU
        sierra uniform => SU
        bravo alpha => BA
        bravo alpha flashing => BA flashing
        the bA is flashing => BA flashing
        little b big A => BA
        flashes b a => BA flashing
        ba flashing => BA flashing
        b 4 code => B4
        code b as in bravo 4 => B4
        b-4 => B4
        B-4 error => B4
        before it showed b4 now shows d5 => B4
        p6 p6 => P6
        L-1 => L1
        l dash 1 => L1
        L minus 1 => L1
        code L1 => L1
        error L1 on display => L1
        L1 steady => L1 steady
        L1 is on the display => L1
        i5 => I5
        EO => E0
        E O => E0
        E o => E0
        e 0 => E0
        F0 => F0
        FO => F0
        F zero => F0
        eff oh => F0
        eight eight => 88
        88 on both digits => 88
        both digits lit all segments => 88
        shows 8 8 => 88
        --. => --
        shows -- => --
        shows - - => --
        display shows dashes => --
        just two dashes => --
        - - flashing => -- flashing
        flashing dashes => -- flashing
        lamp green blinks 3 red blinks 1 => lamps green 3,red 1
        green LED 3 flashes, red LED 1 flash => lamps green 3,red 1
        red led flashes twice, green once => lamps red 2,green 1
        3 flashes green then 1 red => lamps green 3,red 1
        blink code 5 => blinks 5
        blinking 5 times => blinks 5
        5 blink code => blinks 5
        five blink code => blinks 5
        flash code 6 => 6 flashing
        flash code six => 6 flashing
        6 blink => blinks 6
        led blinking two times and pause => blinks 2
        it flashes seven times => blinks 7
        it blinks 2, pause, 3 => blinks 2
        2 blinks pause 3 blinks => lamps first 2,second 3
        blinks 4 times every 2 seconds => blinks 4
        timer lamp flashing once per second => blinks 1 lamps timer 1
        green steady red 2 flashes => blinks 2 lamps red 2
        H5 then H6 => H5
        P8? => P8
        p 8! => P8
        P-8, steady => P8 steady
        u0 / U0 => U0
        E7 E7 => E7
        E.7 => E7
        error e-7 => E7
        Er 7 => ER7
        Er7 => ER7
        F13 => F13
        u4 => U4
        U4 on zone 2 => U4
        AH 5 => AH5
        A5 => A5
        A 5 => A5
        a5 => A5
        6b => 6B
        66 => 66
        b6 => B6
        bb => BB
        b six => B6
        B six flashing => B6 flashing
        little b six => B6
        capital B six => B6
        nine g => 99
        """);

    // Words, readings, refrigerants, terminals, counts.
    public static TheoryData<string> OrdinaryTalk => [.. Lines(
        """
        Hi there
        hi, no heat
        i see two boards
        I have 5 units
        a 5 minute delay
        swapped 2 boards
        it's 24C in here
        10k at 24C
        R-410A
        R32 system
        R 32
        uses r 410 a
        L1 to L2 is 240
        L1 118 L2 121
        24 volts on L1 and L2
        R to S 1.2
        CN5 pin 1
        model AB-12X9
        led is green
        no heat
        does not cool, fan not spinning
        unit is dead
        compressor hums and trips
        it is 5 to 10 degrees off
        E/5
        blank display
        nothing on the display
        no code just beeps 5 times
        when I press the button it beeps twice
        it blinks every 5 seconds
        the stat says 24
        is it on
        set to 72
        room 5
        shows 40 degrees
        five you
        T1 reads 10k
        unit 5 has no heat
        the 2nd floor unit
        it's 12 years old
        five year old unit
        two units same code
        no cooling 3 days
        runs for 3 minutes then stops
        it trips every 5 minutes
        C5 breaker
        we have 3 heads
        light blinks fast
        slow blinking
        solid green
        """)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void TryFind_CodeInAnyWords_IsTheCanonicalOne(string text, string expected)
    {
        Assert.True(GlyphReader.TryFind(text, out GlyphReading? reading, out TextSpan span));
        Assert.Equal(expected, Show(reading));
        Assert.InRange(span.End, 1, text.Length);
    }

    [Theory]
    [MemberData(nameof(OrdinaryTalk))]
    public void TryFind_OrdinaryTalk_FindsNothing(string text) => Assert.False(GlyphReader.TryFind(text, out _));

    [Theory]
    [InlineData("SO", "S0")]
    [InlineData("HI", "H1")]
    [InlineData("oFF", "OFF")]
    [InlineData("5O", "50")]
    [InlineData("E/5", "E5")]
    [InlineData("OL", "OL")]
    public void Read_NothingButACode_TakesEvenAnEverydayWord(string text, string canonical) =>
        Assert.Equal(canonical, GlyphReader.Read(text).Canonical);

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("the unit is dead")]
    public void Read_NoCode_IsEmpty(string text) => Assert.Equal(new GlyphReading("", []), GlyphReader.Read(text));

    [Fact]
    public void TryFind_CodeInASentence_SpanHoldsItsWords()
    {
        const string text = "unit is showing e five and beeping";
        Assert.True(GlyphReader.TryFind(text, out _, out TextSpan span));
        Assert.Equal("e five", text.Substring(span.Start, span.Length));
    }

    private static string Show(GlyphReading reading) => string.Join(' ', new[]
    {
        reading.Canonical,
        reading.Flashing switch { true => "flashing", false => "steady", null => "" },
        reading.Blinks is null ? "" : $"blinks {reading.Blinks}",
        reading.Lamps.IsEmpty ? "" : "lamps "
            + string.Join(",", reading.Lamps.Select(lamp => $"{lamp.Lamp} {lamp.Blinks}")),
    }.Where(part => part.Length > 0));

    private static TheoryData<string, string> Rows(string table)
    {
        var rows = new TheoryData<string, string>();
        foreach (string[] cells in Lines(table).Select(line => line.Split(" => ", StringSplitOptions.TrimEntries)))
        {
            rows.Add(cells[0], cells[1]);
        }
        return rows;
    }

    private static string[] Lines(string table) =>
        table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
