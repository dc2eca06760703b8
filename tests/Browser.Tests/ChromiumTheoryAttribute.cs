namespace DxAssistant.Browser.Tests;

/// <summary>As <see cref="ChromiumFactAttribute"/>, for a test with cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ChromiumTheoryAttribute : TheoryAttribute
{
    public ChromiumTheoryAttribute()
    {
        if (Chromium.Path is null && !Chromium.Required)
            Skip = "no Chromium on this machine: install the package chromium";
    }
}
