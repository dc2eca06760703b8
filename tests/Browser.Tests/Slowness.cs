using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A page at a part of the processor, until this is disposed of.</summary>
internal sealed class Slowness : IAsyncDisposable
{
    private readonly ICDPSession session;

    private Slowness(ICDPSession session) => this.session = session;

    /// <param name="times">How many times slower than the machine.</param>
    public static async Task<Slowness> OfAsync(IPage page, int times)
    {
        var slowness = new Slowness(await page.Context.NewCDPSessionAsync(page));
        await slowness.SetAsync(times);
        return slowness;
    }

    public async ValueTask DisposeAsync()
    {
        await SetAsync(1);
        await session.DetachAsync();
    }

    private async Task SetAsync(int times) =>
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = times });
}
