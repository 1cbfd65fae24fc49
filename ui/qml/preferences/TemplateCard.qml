// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// A setting template in the list: what it is, whether it can be used, and what can be done with it.
Card {
    id: card

    required property var modelData  // {id, name, note, detail, problem}
    property string mark
    default property alias actions: actionRow.data

    title: modelData.name
    note: mark

    PlainWords {
        text: card.modelData.detail
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: card.modelData.note
        kind: "small"
        soft: true
        Layout.fillWidth: true
    }
    ErrorLine {
        text: card.modelData.problem.length > 0 ? qsTr("Cannot be used yet. %1").arg(card.modelData.problem) : ""
        Layout.fillWidth: true
    }
    Flow {
        id: actionRow
        spacing: Theme.gap
        Layout.fillWidth: true
    }
}
