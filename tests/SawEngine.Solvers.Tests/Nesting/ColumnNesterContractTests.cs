using SawEngine.Core.Nesting;
using SawEngine.Solvers.Nesting;

namespace SawEngine.Solvers.Tests.Nesting;

public class ColumnNesterContractTests : NesterContract
{
    protected override INester Nester { get; } = new ColumnNester();
}
