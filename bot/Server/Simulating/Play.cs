namespace DxAssistant.Server.Simulating;

/// <summary>What makes a walk harder than one fault, told surely, with each question answered.</summary>
internal enum Play
{
    /// <summary>One fault, told surely; each question is answered.</summary>
    Plain,

    /// <summary>Some questions are answered with "not sure" or "cannot do that here".</summary>
    Doubts,

    /// <summary>A sign that the fault does not give is told with the true one, with a "maybe".</summary>
    WrongSign,

    /// <summary>Somebody changed another part before, in vain.</summary>
    VainRepair,

    /// <summary>Once the first fault is cured a second one shows.</summary>
    SecondFault,
}
