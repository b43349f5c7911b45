using System.Security.Cryptography;
using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

public sealed class PictureTests
{
    private static readonly byte[] Png = [0x89, (byte)'P', (byte)'N', (byte)'G', 1, 2, 3];

    private static PhotoHash HashOf(byte[] bytes) => new(Convert.ToHexStringLower(SHA256.HashData(bytes)));

    [Fact]
    public void A_photo_goes_into_the_page_itself() =>
        Assert.Equal($"data:image/png;base64,{Convert.ToBase64String(Png)}", Picture.Of(HashOf(Png), _ => Png).Uri);

    [Fact]
    public void A_photo_that_is_not_here_is_said_to_be_elsewhere()
    {
        var picture = Picture.Of(HashOf(Png), _ => null);
        Assert.Null(picture.Uri);
        Assert.Contains("kept elsewhere", picture.Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_the_recorded_photo_is_not_shown()
    {
        var picture = Picture.Of(HashOf(Png), _ => [.. Png, 4]);
        Assert.Null(picture.Uri);
        Assert.Contains("does not match", picture.Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_picture_is_not_shown_whatever_it_is_called()
    {
        var page = "<svg onload='alert(1)'/>"u8.ToArray();
        Assert.Null(Picture.Of(HashOf(page), _ => page).Uri);
    }

    [Fact]
    public void A_photo_too_large_to_mail_is_left_out_with_a_word()
    {
        var picture = Picture.Of(HashOf(Png), _ => new byte[Picture.LargestBytes + 1]);
        Assert.Contains("too large", picture.Instead, StringComparison.Ordinal);
    }
}
