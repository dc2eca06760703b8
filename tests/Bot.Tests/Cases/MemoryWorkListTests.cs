using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class MemoryWorkListTests : WorkListTests
{
    protected override Task<ICaseStore> MakeAsync() =>
        Task.FromResult<ICaseStore>(new MemoryCaseStore(TimeProvider.System));
}
