using Wainwright.Web.Entry;

namespace Wainwright.Web.Tests.Entry;

public sealed class NextIdTests
{
    [Theory]
    [InlineData("", "P01")]
    [InlineData("A01 A02 A64", "A65")]
    [InlineData("A01 A02 A14t X9", "A03")]
    [InlineData("A9", "A10")]
    [InlineData("seat box", "P01")]
    public void The_next_id_follows_the_manner_of_those_before(string ids, string next) =>
        Assert.Equal(next, NextId.After(ids.Split(' ', StringSplitOptions.RemoveEmptyEntries), "P"));
}
