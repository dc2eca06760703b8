using DxAssistant.Cases.Claims;

namespace DxAssistant.Bot.Tests.Cases.Claims;

public sealed class SqliteClaimStoreTests : ClaimStoreTests
{
    protected override IClaimStore Make() => SqlClaimStore.InMemory();
}
