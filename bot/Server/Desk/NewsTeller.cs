using System.Text;
using DxAssistant.Cases.Claims;

namespace DxAssistant.Server.Desk;

/// <summary>Tells the news that is due, once; what cannot be told waits longer each time.</summary>
internal sealed class NewsTeller(IClaimStore claims, NewsSettings settings, HttpClient http, TimeProvider clock)
{
    private const int AtOnce = 50;
    private static readonly TimeSpan FirstWait = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan LongestWait = TimeSpan.FromHours(1);

    /// <returns>How many were told.</returns>
    public async Task<int> TellAsync(CancellationToken cancel)
    {
        int told = 0;
        foreach (var notice in await claims.DueAsync(clock.GetUtcNow(), AtOnce, cancel))
        {
            if (await ArrivesAsync(notice, cancel))
            {
                await claims.ToldAsync(notice, cancel);
                told++;
            }
            else
            {
                await claims.PutOffAsync(notice, clock.GetUtcNow() + Wait(notice.Tries), cancel);
            }
        }

        return told;
    }

    /// <summary>How long news waits that was tried in vain so often before: twice as long each time, an hour at
    /// most.</summary>
    public static TimeSpan Wait(int tries) =>
        tries >= 11 ? LongestWait : TimeSpan.FromTicks(Math.Min(LongestWait.Ticks, FirstWait.Ticks << tries));

    private async Task<bool> ArrivesAsync(ClaimNotice notice, CancellationToken cancel)
    {
        var now = clock.GetUtcNow();
        using var request = new HttpRequestMessage(HttpMethod.Post, settings.Address)
        {
            Content = new StringContent(notice.Body, Encoding.UTF8, "application/json"),
        };
        request.Headers.Add(NewsSignature.TimeHeader, NewsSignature.Time(now));
        request.Headers.Add(NewsSignature.Header, NewsSignature.Of(settings.Secret, now, notice.Body));
        try
        {
            using var response = await http.SendAsync(request, cancel);
            return response.IsSuccessStatusCode;
        }
        catch (Exception error) when (error is HttpRequestException or TaskCanceledException
            && !cancel.IsCancellationRequested)
        {
            return false;
        }
    }
}
