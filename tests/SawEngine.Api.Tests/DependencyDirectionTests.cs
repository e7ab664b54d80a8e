using System.Reflection;
using SawEngine.Core;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Api.Tests;

public sealed class DependencyDirectionTests
{
    private static readonly Assembly Core = typeof(Effort).Assembly;
    private static readonly Assembly Solvers = typeof(GreedyNester).Assembly;
    private static readonly Assembly Api = typeof(SawEngineApi).Assembly;

    [Fact]
    public void Core_sees_the_base_class_library_alone() => Assert.Empty(Foreign(Core));

    [Fact]
    public void Solvers_see_core_and_the_solver_library_alone() =>
        Assert.Empty(Foreign(Solvers).Except(["SawEngine.Core", "Google.OrTools", "Google.Protobuf"]));

    [Fact]
    public void Only_the_api_sees_the_web()
    {
        Assert.DoesNotContain(References(Core).Concat(References(Solvers)), IsWeb);
        Assert.Contains(References(Api), IsWeb);
    }

    [Fact]
    public void The_api_does_not_see_the_solver_library() => Assert.DoesNotContain(References(Api), name => name.StartsWith("Google.", StringComparison.Ordinal));

    private static IEnumerable<string> References(Assembly assembly) => assembly.GetReferencedAssemblies().Select(name => name.Name!);

    private static IEnumerable<string> Foreign(Assembly assembly) =>
        References(assembly).Where(name => !name.StartsWith("System.", StringComparison.Ordinal) && name is not ("netstandard" or "mscorlib"));

    private static bool IsWeb(string name) => name.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal);
}
