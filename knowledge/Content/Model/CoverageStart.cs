namespace DxAssistant.Knowledge.Content.Model;

/// <summary>The day from which the months of coverage run.</summary>
public enum CoverageStart
{
    /// <summary>The day the unit was put into use by its installer.</summary>
    Installation,

    /// <summary>The day on the bill.</summary>
    Purchase,
}
