namespace DxAssistant.Knowledge.Judging;

/// <summary>A figure made from a saturation temperature and another temperature.</summary>
/// <param name="Curve"><c>bubble</c>, <c>dew</c>, or <c>middle</c> between them.</param>
/// <param name="SaturationSign">1 when a higher saturation temperature makes it larger, −1 when smaller.</param>
internal sealed record LineFigure(string Name, string Formula, string Curve, int SaturationSign)
{
    public static LineFigure Superheat { get; } = new("superheat", "superheat = T - T_dew", "dew", -1);

    public static LineFigure Subcooling { get; } = new("subcooling", "subcooling = T_bubble - T", "bubble", 1);

    public static LineFigure SaturationSplit { get; } = new("split", "split = (T_bubble + T_dew) / 2 - T", "middle", 1);
}
