using System.Buffers.Binary;
using System.Text;
using DxAssistant.Cases.Photos;

namespace DxAssistant.Bot.Tests.Cases.Photos;

/// <summary>What is taken as a photo, and what is left of it.</summary>
public sealed class PhotoTests
{
    private const string Secret = "N 59 12.5 E 10 24.1 camera 4711";

    public static TheoryData<string> Types => ["image/jpeg", "image/png", "image/webp"];

    [Theory]
    [MemberData(nameof(Types))]
    public void Take_PlainPicture_IsKeptAsItIs(string type)
    {
        var photo = Photo.Take(Plain(type))!;

        Assert.Equal(type, photo.Type);
        Assert.Equal(Plain(type), photo.Bytes);
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void Take_PictureWithNotes_LosesAllButThePicture(string type)
    {
        byte[] noted = Noted(type);
        Assert.Contains(Secret, Encoding.Latin1.GetString(noted), StringComparison.Ordinal);

        var photo = Photo.Take(noted)!;

        Assert.Equal(Plain(type), photo.Bytes);
        Assert.Equal(photo.Hash, Photo.Take(photo.Bytes)!.Hash);
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void Take_PictureCutAnywhere_IsRefused(string type)
    {
        byte[] whole = Plain(type);
        for (int length = 0; length < whole.Length; length++) Assert.Null(Photo.Take(whole[..length]));
    }

    // Whatever single byte is another one: no picture that is kept carries anything but what a second cleaning keeps
    // too.
    [Theory]
    [MemberData(nameof(Types))]
    public void Take_AnyByteChanged_IsRefusedOrStaysClean(string type)
    {
        byte[] noted = Noted(type);
        for (int at = 0; at < noted.Length; at++)
        {
            byte[] changed = [.. noted];
            changed[at] ^= 0x55;
            if (Photo.Take(changed) is { } photo) Assert.Equal(photo.Bytes, Photo.Take(photo.Bytes)?.Bytes);
        }
    }

    [Fact]
    public void Take_JpegLyingOnItsSide_KeepsOnlyThat()
    {
        // Source: Exif 2.3 (CIPA DC-008), 4.6.4: tag 0x0112, type SHORT, 6 is a quarter turn to the right.
        byte[] exif = [.. "Exif\0\0II*\0"u8, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, 6, 0, 0, 0, 0, 0, 0, 0,
            .. Encoding.ASCII.GetBytes(Secret)];
        byte[] photo = Photo.Take(WithSegment(SmallPictures.Jpeg, 0xE1, exif))!.Bytes;

        Assert.Equal(SmallPictures.Jpeg.Length + 36, photo.Length);
        Assert.DoesNotContain(Secret, Encoding.Latin1.GetString(photo), StringComparison.Ordinal);
        Assert.Equal(photo, Photo.Take(photo)!.Bytes);
    }

    [Theory]
    [InlineData("<html><script>alert(1)</script>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>")]
    [InlineData("GIF89a")]
    [InlineData("%PDF-1.7")]
    [InlineData("")]
    public void Take_SomethingElse_IsRefused(string text) => Assert.Null(Photo.Take(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Take_SignatureAlone_IsRefused()
    {
        Assert.Null(Photo.Take([0xFF, 0xD8, 0xFF, 0xE0, .. "<script>"u8]));
        Assert.Null(Photo.Take([0xFF, 0xD8, 0xFF, 0xD9]));
    }

    [Fact]
    public void Take_TooLarge_IsRefused()
    {
        byte[] filler = new byte[Photo.Largest];
        Assert.Null(Photo.Take([.. SmallPictures.Png, .. filler]));
    }

    private static byte[] Plain(string type) => type switch
    {
        "image/jpeg" => SmallPictures.Jpeg, "image/png" => SmallPictures.Png, _ => SmallPictures.Webp,
    };

    // With what a camera or a chat program puts in, and a page put behind its end.
    private static byte[] Noted(string type)
    {
        byte[] secret = Encoding.ASCII.GetBytes(Secret);
        byte[] page = [.. "<script>"u8, .. secret];
        return type switch
        {
            "image/jpeg" =>
                [.. WithSegment(WithSegment(WithSegment(SmallPictures.Jpeg, 0xE1, [.. "Exif\0\0"u8, .. secret]), 0xFE,
                    secret), 0xE2, [.. "ICC_PROFILE\0"u8, .. secret]), .. page],
            "image/png" =>
                [.. SmallPictures.Png[..33], .. Chunk("tEXt", secret), .. Chunk("eXIf", secret),
                    .. SmallPictures.Png[33..], .. page],
            _ => [.. WithChunk(SmallPictures.Webp, "EXIF", secret), .. page],
        };
    }

    private static byte[] WithSegment(byte[] jpeg, byte marker, byte[] body) =>
        [.. jpeg[..2], 0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body, .. jpeg[2..]];

    private static byte[] Chunk(string type, byte[] body)
    {
        byte[] length = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, body.Length);
        return [.. length, .. Encoding.ASCII.GetBytes(type), .. body, 0, 0, 0, 0];
    }

    private static byte[] WithChunk(byte[] webp, string type, byte[] body)
    {
        byte[] length = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, body.Length);
        byte[] made = [.. webp, .. Encoding.ASCII.GetBytes(type), .. length, .. body, .. new byte[body.Length & 1]];
        BinaryPrimitives.WriteInt32LittleEndian(made.AsSpan(4), made.Length - 8);
        made[20] |= 0x08;
        return made;
    }
}
