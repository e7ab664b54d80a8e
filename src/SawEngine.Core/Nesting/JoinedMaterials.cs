namespace SawEngine.Core.Nesting;

/// <summary>Materials that substitutes join: pieces of one and bars of another may meet, so that they are nested together.</summary>
public static class JoinedMaterials
{
    /// <summary>For each material the one that stands for all that it is joined with: the first of them in the order given.</summary>
    /// <typeparam name="T">A section and grade.</typeparam>
    /// <param name="materials">The materials, each once.</param>
    /// <param name="links">Pairs of them that are joined.</param>
    public static IReadOnlyDictionary<T, T> Of<T>(IEnumerable<T> materials, IEnumerable<(T One, T Other)> links)
        where T : notnull
    {
        var order = materials.ToList();
        var place = Enumerable.Range(0, order.Count).ToDictionary(index => order[index]);
        var parent = Enumerable.Range(0, order.Count).ToArray();
        foreach (var (one, other) in links)
        {
            var (first, second) = (First(place[one]), First(place[other]));
            parent[Math.Max(first, second)] = Math.Min(first, second);
        }
        return order.ToDictionary(material => material, material => order[First(place[material])]);

        int First(int index)
        {
            while (parent[index] != index)
                index = parent[index] = parent[parent[index]];
            return index;
        }
    }
}
