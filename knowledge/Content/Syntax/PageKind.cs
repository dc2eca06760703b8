namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>What a page is about; written in lower case in the front matter.</summary>
internal enum PageKind
{
    Index,
    Words,
    Sources,
    Phrases,
    Glossary,
    Roles,
    Access,
    Caution,
    Series,
    Curve,
    Meter,
    Symptom,
    Fault,
    Check,
    Repair,
    Refusal,
    Coverage,
    Language,
    Question,
    Term,
}
