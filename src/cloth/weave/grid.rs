//! Squares that are filled or empty, packed 64 to a word.

/// Lines of squares, each line beginning with a new word. Squares past the end of a line are empty.
#[derive(Clone, PartialEq, Eq, Hash)]
pub(super) struct Grid {
    lines: usize,
    len: usize,
    stride: usize,
    words: Vec<u64>,
}

impl Grid {
    pub(super) fn new(lines: usize, len: usize) -> Grid {
        let stride = len.div_ceil(64);
        Grid { lines, len, stride, words: vec![0; lines * stride] }
    }
    pub(super) fn from_fn(lines: usize, len: usize, filled: impl Fn(usize, usize) -> bool) -> Grid {
        let mut grid = Grid::new(lines, len);
        for line in 0..lines {
            for at in 0..len {
                grid.words[line * grid.stride + at / 64] |=
                    u64::from(filled(line, at)) << (at % 64);
            }
        }
        grid
    }
    /// Lines of `len` squares that follow each other, a byte each, 0 where empty.
    pub(super) fn pack(cells: &[u8], len: usize) -> Grid {
        let mut grid = Grid::new(cells.len() / len, len);
        for (line, words) in cells.chunks_exact(len).zip(grid.words.chunks_exact_mut(grid.stride)) {
            let (blocks, rest) = line.as_chunks::<64>();
            for (block, word) in blocks.iter().zip(words.iter_mut()) {
                *word = gathered(block);
            }
            if let Some(last) = words.get_mut(blocks.len()) {
                let mut block = [0; 64];
                block[..rest.len()].copy_from_slice(rest);
                *last = gathered(&block);
            }
        }
        grid
    }
    pub(super) fn lines(&self) -> usize {
        self.lines
    }
    pub(super) fn len(&self) -> usize {
        self.len
    }
    pub(super) fn get(&self, line: usize, at: usize) -> bool {
        assert!(line < self.lines && at < self.len, "a square outside the repeat");
        self.words[line * self.stride + at / 64] >> (at % 64) & 1 == 1
    }
    pub(super) fn line(&self, line: usize) -> &[u64] {
        &self.words[line * self.stride..][..self.stride]
    }
    pub(super) fn filled(&self) -> usize {
        self.words.iter().map(|w| w.count_ones() as usize).sum()
    }
    /// The first lines.
    pub(super) fn first(mut self, lines: usize) -> Grid {
        self.words.truncate(lines * self.stride);
        self.lines = lines;
        self
    }
    /// The smallest shift of the lines, going round, that leaves all as it is.
    pub(super) fn period(&self) -> usize {
        let same = |by: usize| {
            let (head, tail) =
                (&self.words[..self.words.len() - by * self.stride], by * self.stride);
            head == &self.words[tail..]
        };
        (1..self.lines).find(|by| self.lines.is_multiple_of(*by) && same(*by)).unwrap_or(self.lines)
    }
    /// Lines and squares exchanged, by blocks of 64 × 64.
    pub(super) fn transposed(&self) -> Grid {
        let mut turned = Grid::new(self.len, self.lines);
        let mut block = [0_u64; 64];
        for (row, lines) in (0..self.lines).step_by(64).enumerate() {
            for column in 0..self.stride {
                for (k, word) in block.iter_mut().enumerate() {
                    let line = lines + k;
                    *word =
                        if line < self.lines { self.words[line * self.stride + column] } else { 0 };
                }
                turn(&mut block);
                for (k, word) in
                    block.iter().enumerate().take(self.len - (column * 64).min(self.len))
                {
                    turned.words[(column * 64 + k) * turned.stride + row] = *word;
                }
            }
        }
        turned
    }
    /// Where a line changes between filled and empty, the first square after the last: a bit is set
    /// where a square differs from the one before it.
    pub(super) fn changes(&self, line: usize) -> impl Iterator<Item = u64> + '_ {
        let words = self.line(line);
        let last = words[(self.len - 1) / 64] >> ((self.len - 1) % 64) & 1;
        let spare = self.stride * 64 - self.len;
        words.iter().enumerate().scan(last, move |carry, (k, word)| {
            let before = word << 1 | *carry;
            *carry = word >> 63;
            let used = if k + 1 == words.len() { u64::MAX >> spare } else { u64::MAX };
            Some((word ^ before) & used)
        })
    }

    /// How often each line changes.
    pub(super) fn passages(&self) -> Vec<usize> {
        let spare = self.stride * 64 - self.len;
        let count = |line| {
            let words = self.line(line);
            // All but the ends in a plain loop over neighbours, which is fast.
            let inner = words.windows(2).map(|two| two[1] ^ (two[1] << 1 | two[0] >> 63));
            let inner: u32 = inner.map(u64::count_ones).sum();
            let tail = words[self.stride - 1];
            let first = words[0] ^ (words[0] << 1 | (tail >> (63 - spare) & 1));
            // The square past the last is empty: it is a change where the last is filled.
            let past = if spare > 0 { tail >> (63 - spare) & 1 } else { 0 };
            (inner + first.count_ones()) as usize - past as usize
        };
        (0..self.lines).map(count).collect()
    }

    /// The longest row of squares alike across the lines, going round: the square at which it is,
    /// the line where it begins, how long it is. Of equals the first square, then the first line.
    pub(super) fn longest_across(&self) -> (usize, usize, usize) {
        let (lines, stride) = (self.lines, self.stride);
        // Marks where a square is like the one on the line before; marks of so many lines are laid on
        // top of each other, twice as many each round, until none would be left.
        let mut marks = self.alike_before();
        let mut count = 1;
        while 2 * count < lines && meet(&marks, count * stride) {
            lay(&mut marks, count * stride);
            count *= 2;
        }
        // Few are left: each is followed from where it begins.
        let mut best = (0, 0, 1);
        for line in 0..lines {
            let before = (line + lines - 1) % lines;
            if marks[line * stride..][..stride].iter().all(|word| *word == 0) {
                continue;
            }
            for k in 0..stride {
                let mut begin = marks[line * stride + k] & !marks[before * stride + k];
                while begin != 0 {
                    let square = k * 64 + begin.trailing_zeros() as usize;
                    begin &= begin - 1;
                    let side = self.get(line, square);
                    let further = (count..lines)
                        .take_while(|more| self.get((line + more) % lines, square) == side)
                        .count();
                    let found = (square, before, 1 + count + further);
                    let earlier = (found.0, found.1) < (best.0, best.1);
                    if found.2 > best.2 || found.2 == best.2 && earlier {
                        best = found;
                    }
                }
            }
        }
        best
    }
    /// Marks where a square is like the one on the line before, the first line after the last.
    fn alike_before(&self) -> Vec<u64> {
        let like = |(word, other): (&u64, &u64)| !(word ^ other);
        let (first, others) = self.words.split_at(self.stride);
        let last = &self.words[self.words.len() - self.stride..];
        let mut marks = Vec::with_capacity(self.words.len());
        marks.extend(first.iter().zip(last).map(like));
        marks.extend(others.iter().zip(&self.words).map(like));
        let used = u64::MAX >> (self.stride * 64 - self.len);
        marks.iter_mut().skip(self.stride - 1).step_by(self.stride).for_each(|word| *word &= used);
        marks
    }
}

/// True where some mark is on another one so many words later, going round.
fn meet(marks: &[u64], by: usize) -> bool {
    let (head, tail) = marks.split_at(by);
    // A stretch at a time: within one nothing is asked, which is fast.
    let some = |marks: &[u64], later: &[u64]| {
        marks.chunks(64).zip(later.chunks(64)).any(|(marks, later)| {
            marks.iter().zip(later).fold(0, |any, (mark, later)| any | mark & later) != 0
        })
    };
    some(&marks[..tail.len()], tail) || some(&marks[tail.len()..], head)
}

/// Leaves the marks that are on another one so many words later, going round.
fn lay(marks: &mut [u64], by: usize) {
    let head = marks[..by].to_vec();
    let whole = marks.len() - by;
    for start in (0..whole).step_by(by) {
        let (here, later) = marks.split_at_mut(start + by);
        here[start..].iter_mut().zip(later).for_each(|(mark, later)| *mark &= *later);
    }
    // What is left over at the end of the last step, and then the beginning.
    for (mark, later) in marks[whole..].iter_mut().zip(&head) {
        *mark &= later;
    }
}

/// A bit for each of 64 bytes that is not 0.
#[inline(always)]
fn gathered(block: &[u8; 64]) -> u64 {
    const ONES: u64 = 0x0101_0101_0101_0101;
    let (eights, _) = block.as_chunks::<8>();
    let any = eights.iter().fold(0, |any, eight| any | u64::from_le_bytes(*eight));
    if any & !ONES == 0 { gathered_ones(block) } else { gathered_others(block) }
}

#[cold]
#[inline(never)]
fn gathered_others(block: &[u8; 64]) -> u64 {
    gathered_ones(&block.map(|byte| u8::from(byte != 0)))
}

/// A bit for each of 64 bytes that are 0 or 1.
#[inline(always)]
fn gathered_ones(block: &[u8; 64]) -> u64 {
    let (eights, _) = block.as_chunks::<8>();
    let eight = |k: usize| u64::from_le_bytes(eights[k]);
    // The byte j of the k-th eight becomes bit k of byte j, and then rows and columns are exchanged.
    let pair = |k: usize| eight(k) | eight(k + 1) << 1;
    let mut bits = pair(0) | pair(2) << 2 | (pair(4) | pair(6) << 2) << 4;
    for (by, mask) in
        [(7, 0x00AA_00AA_00AA_00AA), (14, 0x0000_CCCC_0000_CCCC), (28, 0x0000_0000_F0F0_F0F0)]
    {
        let swapped = (bits ^ (bits >> by)) & mask;
        bits ^= swapped ^ (swapped << by);
    }
    bits
}

/// Exchanges rows and columns of a block, halving the squares it moves each time.
fn turn(block: &mut [u64; 64]) {
    exchange::<32>(block, 0x0000_0000_FFFF_FFFF);
    exchange::<16>(block, 0x0000_FFFF_0000_FFFF);
    exchange::<8>(block, 0x00FF_00FF_00FF_00FF);
    exchange::<4>(block, 0x0F0F_0F0F_0F0F_0F0F);
    exchange::<2>(block, 0x3333_3333_3333_3333);
    exchange::<1>(block, 0x5555_5555_5555_5555);
}

/// Exchanges the squares off the diagonal, each `BY` × `BY`, along it.
#[inline(always)]
fn exchange<const BY: usize>(block: &mut [u64; 64], mask: u64) {
    for pair in block.chunks_exact_mut(2 * BY) {
        let (upper, lower) = pair.split_at_mut(BY);
        for (one, other) in upper.iter_mut().zip(lower) {
            let swapped = (*one >> BY ^ *other) & mask;
            *other ^= swapped;
            *one ^= swapped << BY;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn packed_and_turned(lines in 1_usize..140, len in 1_usize..140, seed: u64) {
            let filled = |line: usize, at: usize| {
                (seed ^ (line * 1031 + at * 37) as u64).wrapping_mul(0x9E37_79B9_7F4A_7C15) >> 63 == 1
            };
            let grid = Grid::from_fn(lines, len, filled);
            let cells: Vec<u8> =
                (0..lines * len).map(|k| 7 * u8::from(filled(k / len, k % len))).collect();
            prop_assert!(grid == Grid::pack(&cells, len));
            let turned = grid.transposed();
            prop_assert!(turned == Grid::from_fn(len, lines, |at, line| filled(line, at)));
            prop_assert!(turned.transposed() == grid);
        }
    }
}
