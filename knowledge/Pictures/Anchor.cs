namespace DxAssistant.Knowledge.Pictures;

/// <summary>Which part of a text stands at its place.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}
