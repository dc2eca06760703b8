using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Knowledge.Tests.Pictures;

public sealed class VerdictPictureTests
{
    public static TheoryData<string> Names => [.. PictureCases.All.Select(known => known.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_KnownVerdict_IsTheKeptPicture(string name) => GoldenPicture.Compare(name, PictureCases.Draw(name)!.Svg);

    [Fact]
    public void Of_EveryJudge_HasAPicture() => Assert.Equal(
        JudgeCatalogue.All.Keys, PictureCases.All.Select(known => known.Judge).Distinct().Order(StringComparer.Ordinal));
}
