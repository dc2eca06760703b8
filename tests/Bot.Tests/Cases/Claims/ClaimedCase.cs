using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Cases.Claims;

/// <summary>A case walked on the shipped pages, in a store, with a desk for its claim.</summary>
internal sealed class ClaimedCase : IAsyncDisposable
{
    public const string Id = "case-one";

    // A walk takes seconds to plan and is the same each time.
    private static readonly ConcurrentDictionary<string, Lazy<ImmutableArray<CaseEvent>>> Walks =
        new(StringComparer.Ordinal);

    public static readonly Clerk Entitled = new("Desk Anna", MayOverride: true, MayDecide: true);
    public static readonly Clerk Plain = new("Technician Bo", MayOverride: false, MayDecide: false);
    public static readonly ClaimUnit Unit = new("BW-12", "BW12-004711", "Mill Lane 4", new DateOnly(2029, 6, 1));

    private ClaimedCase(ICaseStore cases, IClaimStore claims)
    {
        Cases = cases;
        Claims = claims;
        Desk = new ClaimDesk(cases, claims, Clock, () => ShippedContent.Library, tells: true);
    }

    public SetClock Clock { get; } = new(new DateTimeOffset(2030, 5, 6, 12, 0, 0, TimeSpan.Zero));

    public ICaseStore Cases { get; }

    public IClaimStore Claims { get; }

    public ClaimDesk Desk { get; }

    /// <param name="left">A check that is left out; null for none.</param>
    public static async Task<ClaimedCase> WalkedAsync(string? left = null, ICaseStore? cases = null,
        IClaimStore? claims = null)
    {
        var made = new ClaimedCase(
            cases ?? new MemoryCaseStore(new SetClock(new DateTimeOffset(2030, 5, 5, 9, 0, 0, TimeSpan.Zero))),
            claims ?? SqlClaimStore.InMemory());
        await StoreAsync(made.Cases,
            Walks.GetOrAdd(left ?? "", _ => new Lazy<ImmutableArray<CaseEvent>>(() => Walked(left))).Value);
        return made;
    }

    /// <summary>A case that is left to others before any check has a result.</summary>
    public static async Task<ClaimedCase> UnprovenAsync()
    {
        var made = new ClaimedCase(
            new MemoryCaseStore(new SetClock(new DateTimeOffset(2030, 5, 5, 9, 0, 0, TimeSpan.Zero))),
            SqlClaimStore.InMemory());
        var walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
        walker.Order(CommandWord.StopHere);
        await StoreAsync(made.Cases, walker.Log);
        return made;
    }

    public async Task<ClaimExport> BegunAsync() => Saved(await Desk.BeginAsync(Id, Entitled));

    public async Task<ClaimExport> ReadyAsync()
    {
        var claim = await BegunAsync();
        claim = Saved(await Desk.ActAsync(claim.Id, new ClaimAct.TellUnit(Unit), Entitled, 1));
        return Saved(await Desk.ActAsync(claim.Id, new ClaimAct.MakeReady(null), Plain, 2));
    }

    public static ClaimExport Saved(ClaimDone done) => Assert.IsType<ClaimDone.Saved>(done).Claim;

    public async ValueTask DisposeAsync()
    {
        await Claims.DisposeAsync();
        await Cases.DisposeAsync();
    }

    private static ImmutableArray<CaseEvent> Walked(string? left)
    {
        var walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        var unit = HiddenFault.Typical("sensor-room-air");
        for (int turn = 0; turn < 250 && walker.State.ClosedHow is null; turn++)
            if (left is not null && walker.Question is { Kind: QuestionKind.Check } && walker.Question.Subject == left)
                walker.Order(CommandWord.Cannot);
            else if (walker.Question is { Kind: QuestionKind.Check, Subject: "room-sensor-resistance" })
                ReadHigh(walker);
            else unit.Answer(walker);
        return walker.Log;
    }

    private static void ReadHigh(Walker walker) => walker.Fill(
        [.. walker.Question.Fields.Select(field => (field.Label, field.Unit.EndsWith('Ω') ? "100 kΩ" : "25 °C"))]);

    private static async Task StoreAsync(ICaseStore store, ImmutableArray<CaseEvent> log)
    {
        int at = 0;
        for (int turn = 0; at < log.Length; turn++)
        {
            int next = log.Skip(at).TakeWhile(e => e is not Replied).Count() + 1;
            await store.AppendAsync(Id, at, turn.ToString(CultureInfo.InvariantCulture), log.Slice(at, next));
            at += next;
        }
    }
}
