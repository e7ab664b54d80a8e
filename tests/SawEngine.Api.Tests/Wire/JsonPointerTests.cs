using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Wire;

public sealed class JsonPointerTests
{
    /// <summary>The examples of RFC 6901, section 6.</summary>
    [Theory]
    [InlineData("foo", "#/foo")]
    [InlineData("", "#/")]
    [InlineData("a/b", "#/a~1b")]
    [InlineData("c%d", "#/c%25d")]
    [InlineData("e^f", "#/e%5Ef")]
    [InlineData("g|h", "#/g%7Ch")]
    [InlineData("i\\j", "#/i%5Cj")]
    [InlineData("k\"l", "#/k%22l")]
    [InlineData(" ", "#/%20")]
    [InlineData("m~n", "#/m~0n")]
    public void Members_are_escaped_as_in_the_rfc(string name, string pointer) => Assert.Equal(pointer, JsonPointer.Member("#", name));

    [Theory]
    [InlineData("", "#")]
    [InlineData("Pieces", "#/pieces")]
    [InlineData("Pieces[3].FirstEnd.WidthAngle", "#/pieces/3/firstEnd/widthAngle")]
    public void Property_paths_become_pointers(string path, string pointer) => Assert.Equal(pointer, JsonPointer.OfPropertyPath(path));
}
