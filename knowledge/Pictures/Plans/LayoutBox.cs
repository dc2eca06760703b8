namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A box to be placed, in units of the drawing.</summary>
public sealed record LayoutBox(string Id, double Width, double Height);
