using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Wire;

/// <summary>Forms of RFC 7240, section 2.</summary>
public sealed class PreferencesTests
{
    [Theory]
    [InlineData("handling=lenient", true, null)]
    [InlineData("Handling=Lenient, wait=10", true, 10)]
    [InlineData("respond-async, wait = 7; x=\"y\"", false, 7)]
    [InlineData("wait=\"5\"", false, 5)]
    [InlineData("handling=strict", false, null)]
    [InlineData("handling=strict, handling=lenient", false, null)]
    [InlineData("wait=-1", false, null)]
    [InlineData("wait=99999999999", false, null)]
    [InlineData("wait", false, null)]
    [InlineData(",,=;=,", false, null)]
    public void Preferences_are_read_and_what_is_not_understood_is_ignored(string header, bool lenient, int? wait) =>
        Assert.Equal(new Preferences(lenient, wait), Preferences.Parse([header]));
}
