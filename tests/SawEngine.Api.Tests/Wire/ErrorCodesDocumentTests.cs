using System.Reflection;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Wire;

public sealed class ErrorCodesDocumentTests
{
    public static TheoryData<string> Codes => [.. new[] { typeof(FaultCode) }
        .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static))
        .Select(constant => (string)constant.GetValue(null)!)];

    public static TheoryData<string> ProblemTypes => [.. ProblemType.All.Select(type => type.Type)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_code_is_documented(string code) =>
        Assert.Contains($"| `{code}` |", Repository.Read("docs", "error-codes.md"), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(ProblemTypes))]
    public void Every_problem_type_is_documented(string type) =>
        Assert.Contains($"| `{type}` |", Repository.Read("docs", "error-codes.md"), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Codes))]
    public void Codes_are_snake_case(string code) => Assert.Matches("^[a-z][a-z0-9]*(_[a-z0-9]+)*$", code);
}
