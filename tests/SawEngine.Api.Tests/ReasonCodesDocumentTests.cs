using System.Reflection;
using SawEngine.Api.Wire;
using SawEngine.Core.Cautions;
using SawEngine.Core.CuttingData;
using SawEngine.Core.Nesting;
using SawEngine.Core.Planning;
using SawEngine.Core.Saws;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Tests;

public sealed class ReasonCodesDocumentTests
{
    public static TheoryData<string> Codes =>
    [
        .. new[] { typeof(UnplacedReason), typeof(UnscheduledReason), typeof(NestRule), typeof(ScheduleRule), typeof(PlanRule), typeof(SawFit), typeof(BundleFit), typeof(ObstacleCodes), typeof(RejectionCodes), typeof(WarningCode) }
            .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static))
            .Select(constant => (string)constant.GetValue(null)!)
            .Concat(CautionCatalog.Items.Select(kind => kind.Code))
            .Distinct(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_code_is_documented(string code) =>
        Assert.Contains($"| `{code}` |", Repository.Read("docs", "reason-codes.md"), StringComparison.Ordinal);
}
