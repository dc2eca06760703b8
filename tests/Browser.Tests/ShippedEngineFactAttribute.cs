namespace DxAssistant.Browser.Tests;

/// <summary>
/// A test of the engine as it is shipped, trimmed and compressed, which <c>tests/run.sh</c> lays beside the tests:
/// skipped where a plain build lies there; in CI it runs and fails.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ShippedEngineFactAttribute : FactAttribute
{
    public ShippedEngineFactAttribute()
    {
        if (!File.Exists(Path.Combine(AppContext.BaseDirectory, "engine", "dotnet.native.wasm.br"))
            && !Chromium.Required)
            Skip = "the engine beside the tests is not the shipped one: run tests/run.sh";
    }
}
