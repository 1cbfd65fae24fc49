// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// A page's content, one below the other; scrolls by touch, wheel and keys, and follows the focus.
Flickable {
    id: flick

    default property alias content: column.data
    property alias spacing: column.spacing
    property real margin: Theme.space

    readonly property Item focused: Window.activeFocusItem

    implicitWidth: column.implicitWidth + 2 * margin
    implicitHeight: column.implicitHeight + 2 * margin
    contentWidth: width
    contentHeight: column.implicitHeight + 2 * margin
    boundsBehavior: Flickable.StopAtBounds
    clip: true

    function scrollTo(y: real): void {
        contentY = Math.max(0, Math.min(y, contentHeight - height));
    }

    // Of an item in the column, as much as there is room for, its top above all.
    function show(item: Item): void {
        const top = item.mapToItem(column, 0, 0).y;
        if (top + item.height + 2 * margin > contentY + height)
            scrollTo(Math.min(top, top + item.height + 2 * margin - height));
    }

    onFocusedChanged: {
        let item = focused;
        while (item && item !== column)
            item = item.parent;
        if (!item)
            return;
        const top = focused.mapToItem(column, 0, 0).y;
        if (top < contentY)
            scrollTo(top);
        else if (top + focused.height + 2 * margin > contentY + height)
            scrollTo(top + focused.height + 2 * margin - height);
    }

    Keys.onPressed: event => {
        const page = height - Theme.target;
        const to = event.key === Qt.Key_PageDown ? contentY + page : event.key === Qt.Key_PageUp ? contentY - page : event.key === Qt.Key_Home ? 0 : event.key === Qt.Key_End ? contentHeight : -1;
        event.accepted = [Qt.Key_PageDown, Qt.Key_PageUp, Qt.Key_Home, Qt.Key_End].includes(event.key);
        if (event.accepted)
            scrollTo(to);
    }

    ColumnLayout {
        id: column
        x: flick.margin
        y: flick.margin
        // The room for the mark is always kept: a width that hangs on the height makes a layout lay itself out again in the
        // middle of doing so, with items that are gone by then, and Qt 6.4 crashes on them.
        width: Math.min(flick.width - 2 * flick.margin - Theme.scrollBar, Theme.pageWidth)
        spacing: Theme.space
    }
    ScrollMark {
        flick: flick
    }
}
