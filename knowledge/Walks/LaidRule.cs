namespace DxAssistant.Knowledge.Walks;

/// <summary>The rules that are laid over the plan, in the order in which they are asked.</summary>
public enum LaidRule
{
    /// <summary>Nothing is done in another access state before a check in the safe one has a result.</summary>
    FirstIn,

    /// <summary>Of checks whose plans take nearly as long, the one least in the way.</summary>
    NearTie,

    /// <summary>A repair without parts before a check whose answer is all but known.</summary>
    Foregone,

    /// <summary>Once "none of these" leads, only checks worth their minutes, then the end in watching.</summary>
    NothingFound,

    /// <summary>A part is changed only after the checks that its proof names.</summary>
    Proof,

    /// <summary>Before a case is left to others, what this person can put right without a part.</summary>
    OwnWork,

    /// <summary>Who can mend nothing more is asked what helps whoever comes next.</summary>
    ForTheNext,

    /// <summary>What by the custom of the trade comes before a check.</summary>
    Custom,
}
