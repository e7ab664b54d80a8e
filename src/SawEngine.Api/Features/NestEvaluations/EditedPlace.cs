using SawEngine.Api.Wire;

namespace SawEngine.Api.Features.NestEvaluations;

/// <summary>A place in the layouts of a request.</summary>
/// <param name="Layout">The layout, by its place in the list; null for all layouts.</param>
/// <param name="Cut">The cut in the layout; null for the layout as a whole.</param>
/// <param name="Member">A member of the layout; null for the cut or the layout as a whole.</param>
internal readonly record struct EditedPlace(int? Layout, int? Cut = null, string? Member = null)
{
    /// <summary>The place as a JSON Pointer fragment.</summary>
    public string Pointer
    {
        get
        {
            var layouts = JsonPointer.Member(JsonPointer.Root, "layouts");
            if (Layout is not { } index)
                return layouts;
            var layout = JsonPointer.Item(layouts, index);
            return Cut is { } cut ? JsonPointer.Item(JsonPointer.Member(layout, "cuts"), cut)
                : Member is { } member ? JsonPointer.Member(layout, member)
                : layout;
        }
    }
}
