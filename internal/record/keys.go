package record

// manyKeys is how many keys are looked through one by one; beyond it a map is
// faster, and keeps an object of 100,000 keys from taking minutes.
const manyKeys = 16

// keys finds the duplicates in one object while it is read.
type keys struct{ index map[string]int }

// find gives the earlier member with that key, or nil. It is called once for
// each key, in order.
func (k *keys) find(earlier []Node, key string) *Node {
	if len(earlier) < manyKeys {
		for i := range earlier {
			if earlier[i].key == key {
				return &earlier[i]
			}
		}
		return nil
	}
	if k.index == nil {
		k.index = make(map[string]int, 2*manyKeys)
		for i := range earlier {
			k.index[earlier[i].key] = i
		}
	}
	if i, ok := k.index[key]; ok {
		return &earlier[i]
	}
	k.index[key] = len(earlier)
	return nil
}

func twice(file string, second, first *Node) error {
	return newError(file, second.keyAt, second.keyEnd,
		"found the key %s a second time; the first is at line %d, column %d: keep one of them",
		quote(second.key), first.keyAt.line, first.keyAt.col)
}
