using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class EditDistanceTests
{
    // Source: worked by hand from the definition in Damerau 1964 (one insertion, omission, replacement or swap is one
    // error).
    [Theory]
    [InlineData("motor", "motor", 1, true)]
    [InlineData("motor", "moter", 1, true)]
    [InlineData("motor", "mtoor", 1, true)]
    [InlineData("motor", "moto", 1, true)]
    [InlineData("motor", "motoor", 1, true)]
    [InlineData("motor", "mtoo", 1, false)]
    [InlineData("condenser", "condencers", 1, false)]
    [InlineData("condenser", "condencers", 2, true)]
    [InlineData("condenser", "codnesner", 2, true)]
    [InlineData("condenser", "compressor", 2, false)]
    public void IsWithin_TwoWords_CountsErrors(string one, string other, int edits, bool within)
    {
        Assert.Equal(within, EditDistance.IsWithin(one, other, edits));
        Assert.Equal(within, EditDistance.IsWithin(other, one, edits));
    }
}
