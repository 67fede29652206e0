using Fractions;

namespace GearBlanks.Trains;

/// <summary>One linear equation (its sum is zero) or one linear form, of few terms.</summary>
internal sealed class SparseRow
{
    private readonly SortedDictionary<int, Fraction> _terms = [];

    public IReadOnlyDictionary<int, Fraction> Terms => _terms;

    public bool IsEmpty => _terms.Count == 0;

    public Fraction this[int unknown] => _terms.GetValueOrDefault(unknown, Fraction.Zero);

    /// <summary>Adds to a factor; a term that becomes zero goes.</summary>
    public void Add(int unknown, Fraction factor)
    {
        Fraction sum = this[unknown] + factor;
        if (sum.IsZero)
        {
            _terms.Remove(unknown);
        }
        else
        {
            _terms[unknown] = sum;
        }
    }

    public void Add(SparseRow other, Fraction times)
    {
        foreach ((int unknown, Fraction factor) in other._terms)
        {
            Add(unknown, factor * times);
        }
    }
}
