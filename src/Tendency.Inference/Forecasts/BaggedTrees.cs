namespace Tendency.Inference.Forecasts;

/// <summary>
/// A random forest for two outcomes: trees grown on bootstrap samples, a random third of the features tried at each split, leaves shrunk
/// towards the overall rate. Source: Breiman 2001, doi:10.1023/A:1010933404324. Features are cut into at most 32 classes first.
/// </summary>
public sealed class BaggedTrees
{
    /// <summary>Fewest observations of a leaf.</summary>
    private const int LeafSize = 6;

    /// <summary>How many observations the overall rate counts for in a leaf.</summary>
    private const double LeafPrior = 2;

    private const int MostClasses = 32;

    /// <summary>With fewer tries, a branch would often end on a feature that says nothing.</summary>
    private const int FewestTried = 3;

    private readonly Node[] _trees;

    private readonly int _features;

    private BaggedTrees(Node[] trees, int features) => (_trees, _features) = (trees, features);

    /// <param name="features">One row per observation, all of one length; finite numbers.</param>
    /// <param name="hit">What happened.</param>
    /// <param name="trees">How many trees, at least 1.</param>
    /// <param name="seed">The same seed grows the same trees.</param>
    /// <exception cref="ArgumentException">No observation or feature, lengths differ, a feature is not finite, or no tree.</exception>
    public static BaggedTrees Fit(IReadOnlyList<double[]> features, IReadOnlyList<bool> hit, int trees, int seed)
    {
        ArgumentNullException.ThrowIfNull(features);
        ArgumentNullException.ThrowIfNull(hit);
        if (features.Count == 0 || features.Count != hit.Count)
        {
            throw new ArgumentException("Trees need at least one observation, each with its outcome.", nameof(features));
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(trees);
        if (features[0] is not { Length: > 0 } || features.Any(row => row is null || row.Length != features[0].Length || !row.All(double.IsFinite)))
        {
            throw new ArgumentException("Every observation needs the same features, at least one, all finite numbers.", nameof(features));
        }

        var grower = new Grower(features, hit, new Random(seed));
        return new BaggedTrees([.. Enumerable.Range(0, trees).Select(_ => grower.Grow())], features[0].Length);
    }

    /// <summary>Probability of a hit: mean over the trees, strictly inside (0, 1).</summary>
    /// <param name="features">As many as each observation had.</param>
    /// <exception cref="ArgumentException">There are more or fewer.</exception>
    public double Probability(IReadOnlyList<double> features)
    {
        ArgumentNullException.ThrowIfNull(features);
        if (features.Count != _features)
        {
            throw new ArgumentException($"The trees know {_features} features, got {features.Count}.", nameof(features));
        }

        var sum = 0.0;
        foreach (var tree in _trees)
        {
            var node = tree;
            while (node.Left is not null)
            {
                node = features[node.Feature] <= node.Limit ? node.Left : node.Right!;
            }

            sum += node.Rate;
        }

        return sum / _trees.Length;
    }

    private sealed record Node(int Feature, double Limit, double Rate, Node? Left, Node? Right);

    private sealed class Grower
    {
        private readonly bool[] _hit;
        private readonly double[][] _limits;
        private readonly byte[][] _class;
        private readonly Random _chance;
        private readonly double _rate;

        public Grower(IReadOnlyList<double[]> features, IReadOnlyList<bool> hit, Random chance)
        {
            _hit = [.. hit];
            _chance = chance;
            _rate = (_hit.Count(h => h) + 0.5) / (_hit.Length + 1);
            _limits = [.. Enumerable.Range(0, features[0].Length).Select(j => Limits([.. features.Select(row => row[j])]))];
            _class = [.. _limits.Select((limits, j) => features.Select(row => (byte)limits.Count(limit => row[j] > limit)).ToArray())];
        }

        public Node Grow() => Grow([.. Enumerable.Range(0, _hit.Length).Select(_ => _chance.Next(_hit.Length))]);

        // Cuts halfway between neighboring values: all of them when there are few, else at equal counts.
        private static double[] Limits(double[] values)
        {
            Array.Sort(values);
            var distinct = values.Distinct().ToArray();
            var edges = distinct.Length <= MostClasses
                ? distinct
                : [.. Enumerable.Range(0, MostClasses).Select(k => values[k * (values.Length - 1) / (MostClasses - 1)]).Distinct()];
            return [.. edges.Zip(edges.Skip(1), (a, b) => (a + b) / 2)];
        }

        private Node Grow(int[] rows)
        {
            var hits = rows.Count(row => _hit[row]);
            var leaf = new Node(0, 0, (hits + (LeafPrior * _rate)) / (rows.Length + LeafPrior), null, null);
            if (rows.Length < 2 * LeafSize || hits == 0 || hits == rows.Length)
            {
                return leaf;
            }

            var (best, feature, cut) = (1e-9, -1, 0);
            for (var tried = 0; tried < Math.Max(FewestTried, _limits.Length / 3); tried++)
            {
                var j = _chance.Next(_limits.Length);
                var (gain, at) = BestCut(rows, j, hits);
                if (gain > best)
                {
                    (best, feature, cut) = (gain, j, at);
                }
            }

            return feature < 0
                ? leaf
                : new Node(
                    feature,
                    _limits[feature][cut],
                    leaf.Rate,
                    Grow([.. rows.Where(row => _class[feature][row] <= cut)]),
                    Grow([.. rows.Where(row => _class[feature][row] > cut)]));
        }

        private (double Gain, int Cut) BestCut(int[] rows, int feature, int hits)
        {
            Span<int> counts = stackalloc int[MostClasses];
            Span<int> classHits = stackalloc int[MostClasses];
            counts.Clear();
            classHits.Clear();
            foreach (var row in rows)
            {
                counts[_class[feature][row]]++;
                classHits[_class[feature][row]] += _hit[row] ? 1 : 0;
            }

            var best = (Gain: 0.0, Cut: 0);
            int left = 0, leftHits = 0;
            for (var cut = 0; cut < _limits[feature].Length; cut++)
            {
                left += counts[cut];
                leftHits += classHits[cut];
                if (counts[cut] > 0 && left >= LeafSize && rows.Length - left >= LeafSize)
                {
                    var gain = Gain(leftHits, left, hits - leftHits, rows.Length - left);
                    best = gain > best.Gain ? (gain, cut) : best;
                }
            }

            return best;
        }

        // Fall of the Gini impurity, times the observations.
        private static double Gain(double leftHits, double left, double rightHits, double right)
        {
            double hits = leftHits + rightHits, all = left + right;
            return (leftHits * leftHits / left) + (rightHits * rightHits / right) - (hits * hits / all);
        }
    }
}
