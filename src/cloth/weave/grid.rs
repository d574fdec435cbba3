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
    /// Lines of `len` squares that follow each other.
    pub(super) fn pack(cells: &[bool], len: usize) -> Grid {
        let mut grid = Grid::new(cells.len() / len, len);
        for (line, words) in cells.chunks_exact(len).zip(grid.words.chunks_exact_mut(grid.stride)) {
            for (part, word) in line.chunks(64).zip(words) {
                let mut eights = part.chunks_exact(8);
                let mut at = 0;
                for eight in &mut eights {
                    // Eight bytes of 0 or 1 gathered into one byte by a multiplication.
                    let bytes: [u8; 8] = std::array::from_fn(|k| u8::from(eight[k]));
                    let gathered =
                        u64::from_le_bytes(bytes).wrapping_mul(0x0102_0408_1020_4080) >> 56;
                    *word |= gathered << at;
                    at += 8;
                }
                for (k, filled) in eights.remainder().iter().enumerate() {
                    *word |= u64::from(*filled) << (at + k);
                }
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
}

/// Exchanges rows and columns of a block, halving the squares it moves each time.
fn turn(block: &mut [u64; 64]) {
    let (mut by, mut mask) = (32, u64::from(u32::MAX));
    while by != 0 {
        let mut k = 0;
        while k < 64 {
            let swapped = (block[k] >> by ^ block[k | by]) & mask;
            block[k | by] ^= swapped;
            block[k] ^= swapped << by;
            k = ((k | by) + 1) & !by;
        }
        by >>= 1;
        mask ^= mask << by;
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
            let cells: Vec<bool> =
                (0..lines * len).map(|k| filled(k / len, k % len)).collect();
            prop_assert!(grid == Grid::pack(&cells, len));
            let turned = grid.transposed();
            prop_assert!(turned == Grid::from_fn(len, lines, |at, line| filled(line, at)));
            prop_assert!(turned.transposed() == grid);
        }
    }
}
