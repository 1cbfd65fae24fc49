// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Controls
import Wetfront.ViewModels

// Removing a record, as every list offers it: asked first, said afterwards, with the way back.
UndoLine {
    required property RemovedViewModel removed

    function askToRemove(confirm: ConfirmPanel, kind: string, record: string): void {
        confirm.ask(Object.assign({
            keepText: qsTr("Keep it"),
            doText: qsTr("Remove it"),
            warning: false,
            act: () => removed.remove(kind, record)
        }, removed.question(kind, record)));
    }

    text: removed.outcome
    undoable: removed.undoable
    problem: removed.problem
    onUndoAsked: removed.undo()
}
