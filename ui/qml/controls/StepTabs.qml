// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// The steps of the visit in order; any can be gone to at any time. A list at the side in landscape, a strip in
// portrait. The model has the roles title, complete and problem (empty: none).
Flickable {
    id: tabs

    required property var model
    property int current: 0
    property bool vertical: true

    signal chosen(int index)

    implicitWidth: vertical ? Theme.sideWidth : grid.implicitWidth
    implicitHeight: vertical ? grid.implicitHeight : Theme.target + 2 * Theme.gap
    contentWidth: vertical ? width : grid.implicitWidth
    contentHeight: vertical ? grid.implicitHeight : height
    boundsBehavior: Flickable.StopAtBounds
    clip: true

    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Steps")

    function reveal(index: int): void {
        const tab = repeater.itemAt(index);
        if (!tab)
            return;
        const hidden = Theme.gap;
        contentX = vertical ? 0 : Math.max(0, Math.min(tab.x - hidden, Math.max(contentX, tab.x + tab.width + hidden - width)));
        contentY = vertical ? Math.max(0, Math.min(tab.y - hidden, Math.max(contentY, tab.y + tab.height + hidden - height))) : 0;
    }
    function focusTab(index: int): void {
        const tab = repeater.itemAt(index);
        if (tab) {
            tab.forceActiveFocus(Qt.TabFocusReason);
            reveal(index);
        }
    }
    onCurrentChanged: reveal(current)
    onVerticalChanged: reveal(current)
    onHeightChanged: reveal(current)
    onWidthChanged: reveal(current)

    ScrollMark {
        flick: tabs
    }
    GridLayout {
        id: grid
        x: Theme.gap
        y: Theme.gap
        width: tabs.vertical ? tabs.width - 2 * Theme.gap : implicitWidth
        columns: tabs.vertical ? 1 : Math.max(1, repeater.count)
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap

        Repeater {
            id: repeater
            model: tabs.model
            delegate: TouchTarget {
                id: tab

                required property int index
                required property string title
                required property bool complete
                required property string problem

                readonly property bool isCurrent: index === tabs.current

                text: Sentence.fill(qsTr("%1. %2"), [index + 1, title])
                horizontalPadding: Theme.gap
                Accessible.role: Accessible.PageTab
                Accessible.description: problem.length > 0 ? problem : complete ? qsTr("complete") : ""
                Accessible.selected: isCurrent
                onClicked: tabs.chosen(index)
                onActiveFocusChanged: if (activeFocus)
                    tabs.reveal(index)
                // The layout moves the steps after a turn of the tablet.
                onXChanged: if (isCurrent)
                    tabs.reveal(index)
                onYChanged: if (isCurrent)
                    tabs.reveal(index)
                Keys.onUpPressed: tabs.focusTab(index - 1)
                Keys.onLeftPressed: tabs.focusTab(index - 1)
                Keys.onDownPressed: tabs.focusTab(index + 1)
                Keys.onRightPressed: tabs.focusTab(index + 1)
                Layout.fillWidth: tabs.vertical

                background: Rectangle {
                    color: tab.isCurrent || tab.down ? Theme.waterTint : "transparent"
                    radius: Theme.radius
                    Rectangle {
                        visible: tab.isCurrent
                        color: Theme.water
                        y: tabs.vertical ? 0 : parent.height - height
                        width: tabs.vertical ? Theme.spaceSmall : parent.width
                        height: tabs.vertical ? parent.height : Theme.spaceSmall
                    }
                }
                contentItem: RowLayout {
                    spacing: Theme.gap
                    PlainWords {
                        text: tab.index + 1
                        color: tab.isCurrent ? Theme.water : Theme.inkSoft
                        font.bold: tab.isCurrent
                        wrapMode: Text.NoWrap
                        horizontalAlignment: Text.AlignRight
                        Accessible.ignored: true
                        Layout.preferredWidth: Theme.pictogram
                    }
                    PlainWords {
                        text: tab.title
                        color: tab.isCurrent ? Theme.water : Theme.ink
                        font.bold: tab.isCurrent
                        wrapMode: tabs.vertical ? Text.Wrap : Text.NoWrap
                        maximumLineCount: 2
                        elide: Text.ElideRight
                        Accessible.ignored: true
                        Layout.fillWidth: true
                    }
                    Pictogram {
                        visible: name.length > 0
                        name: tab.problem.length > 0 ? "problem" : tab.complete ? "tick" : ""
                        size: Theme.pictogramSmall
                        colour: tab.problem.length > 0 ? Theme.warning : Theme.water
                    }
                }
            }
        }
    }
}
