using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class LineReadingTests
{
    // As technicians type and dictate: two legs.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        lines | L1 118 L2 121 => L1=118 V; L2=121 V
        lines | L1 118, L2 121 => L1=118 V; L2=121 V
        lines | 118 and 121 => L1=118 V; L2=121 V
        lines | L1 118.5V L2 121.2V => L1=118.5 V; L2=121.2 V
        lines | L1: 118 L2: 121 => L1=118 V; L2=121 V
        lines | L1=118v L2=121v => L1=118 V; L2=121 V
        lines | 118 on L1 and 121 on L2 => L1=118 V; L2=121 V
        lines | L1 is one eighteen and L2 is one twenty one => L1=118 V; L2=121 V
        lines | L1-L2 240 => L1-L2=240 V
        lines | L1 118 L2 0 => L1=118 V; L2=0 V
        lines | L1 118V, L2 0V => L1=118 V; L2=0 V
        lines | 118 on both => L1=118 V; L2=118 V
        lines | both 118 => L1=118 V; L2=118 V
        lines | 118 each leg => L1=118 V; L2=118 V
        lines | 118 each => L1=118 V; L2=118 V
        lines | 118 L1 121 L2 => L1=118 V; L2=121 V
        lines | L2 121 L1 118 => L2=121 V; L1=118 V
        lines | L2 121 => L2=121 V
        lines | 118 => ASK which-one [L1=118 V; L2=118 V | L1=118 V | L2=118 V]
        lines | 118 121 => L1=118 V; L2=121 V
        lines | 118/121 => L1=118 V; L2=121 V
        lines | 118-121 => ASK range [L1=118 V | L2=121 V]
        lines | 118, 121 => L1=118 V; L2=121 V
        lines | 118;121 => L1=118 V; L2=121 V
        lines | 118.5 121.4 => L1=118.5 V; L2=121.4 V
        lines | 118,5 121,4 => L1=118.5 V; L2=121.4 V
        lines | one eighteen and one twenty one => L1=118 V; L2=121 V
        lines | one eighteen one twenty one => NONE no-reading
        lines | L one 118 L two 121 => L1=118 V; L2=121 V
        lines | leg 1 118 leg 2 121 => L1=118 V; L2=121 V
        lines | first leg 118 second leg 121 => ASK which-one [L1=121 V; L2=121 V | L1=121 V | L2=121 V]
        lines | L1: 118V AC, L2: 121V AC => L1=118 V; L2=121 V
        lines | L1=118,L2=121 => L1=118 V; L2=121 V
        lines | L1:118,L2:121 => L1=118 V; L2=121 V
        lines | l1 118.l2 121 => L1=118 V; L2=121 V
        lines | L1-118 L2-121 => NONE no-reading
        lines | L1 - 118, L2 - 121 => L1=118 V; L2=121 V
        lines | L1 -118 L2 -121 => ASK impossible []
        lines | L1@118 L2@121 => L1=118 V; L2=121 V
        lines | L1(118) L2(121) => L1=118 V; L2=121 V
        lines | L1 118 L1 119 => ASK which-one [L1=118 V | L1=119 V]
        lines | L1 118 L3 121 => L1=118 V; L3=121 V
        lines | 240 across => ASK which-one [L1=240 V; L2=240 V | L1=240 V | L2=240 V]
        lines | 240 L1-L2 => L1-L2=240 V
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_LineMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
